// Written by `npm run words`, save where each comes from.
export const workbenchStore = {
  'Still to be measured.': 'plain',
  'These numbers can’t be drawn together; the last change was one too many.': 'plain',
  '“{0}” is no length; write it like 102 cm, 40 1/8 in or 40⅛.': 'plain', // {0} shortened(text)
  '“{0}” is not {1}': 'plain', // {0} shortened(typed), {1} wanted
} as const;
