// Written by `npm run words`, save where each comes from.
export const workbenchStore = {
  'And {0} more.': 'plain', // {0} number(problems.length - 2, 0)
  'Lounge pant for {0}': 'plain', // {0} own(wearer.trim())
  'My lounge pant': 'trade',
  'Now measure the body that they are for.': 'plain',
  'Still to be measured.': 'plain',
  'These numbers can’t be drawn together; the last change was one too many.': 'plain',
  'Undo brings the others back.': 'plain',
  estimates: 'plain',
  in: 'standard: SI, and the inch',
  'new measurements': 'plain',
  years: 'plain',
  '{0} to {1} %': 'plain', // {0} number(lowest * 100, 0), {1} number(highest * 100, 0)
  '{0} to {1} years': 'plain', // {0} number(lowest, 0), {1} number(highest, 0)
  '{0} to {1}°': 'plain', // {0} number(lowest, 1), {1} number(highest, 1)
  '“{0}” can’t be opened.': 'plain', // {0} name
  '“{0}” is not a percentage; write it like 35.': 'plain', // {0} own(shortened(text))
  '“{0}” is not an age; write it like 34.': 'plain', // {0} own(shortened(text))
  '“{0}” is not an angle; write it like 1.5.': 'plain', // {0} own(shortened(text))
  '“{0}” isn’t a length; write it like 102 cm, 40 1/8 in or 40⅛.': 'plain', // {0} own(shortened(text))
} as const;
