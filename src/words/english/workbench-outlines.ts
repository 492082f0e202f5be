// Written by `npm run words`, save where each comes from.
export const workbenchOutlines = {
  'As a known length tells': 'plain',
  Back: 'trade',
  'Back and front, their edges and places lit': 'plain',
  'Back, {0}: how long it is': 'plain', // {0} inside(EDGE_NAMES[known.name])
  'Blocks from a drawing': 'trade',
  Centimetres: 'plain',
  'Corners and edges': 'plain',
  'Every edge has its name. Press a place here, then where it lies on the drawing; or press an edge to name it.':
    'plain',
  'Everything on the drawing becomes larger or smaller with it.': 'plain',
  Front: 'trade',
  'Front, {0}: how long it is': 'plain', // {0} inside(EDGE_NAMES[known.name])
  'Hip line': 'trade',
  Inches: 'plain',
  'It runs straight up and down as the piece is drawn': 'plain',
  'Knee line': 'plain',
  'Lengths: press one that you know, if they are wrong': 'plain',
  'Look at the corners': 'plain',
  Millimetres: 'plain',
  'Name them the other way round': 'plain',
  'One unit of the drawing': 'plain',
  Outline: 'plain',
  'Outline {0}, {1} long': 'plain', // {0} number(i + 1, 0), {1} own(reach)
  'Outline {0}, {1} long: {2}': 'plain', // {0} number(i + 1, 0), {1} own(reach), {2} own(name)
  Outlines: 'plain',
  'Pixels, 1/96 in': 'plain',
  'Points, 1/72 in': 'plain',
  'Press anywhere on the level of the fullest hip.': 'trade',
  'Press anywhere on the level of the knee; leave it out where there is none.': 'plain',
  'Press the outline of your front block, then that of the back.': 'trade',
  'Press the straight line of the drawing that is the grainline.': 'trade',
  Redo: 'plain',
  Steps: 'plain',
  'The drawing doesn’t tell its unit: look whether the lengths are right. On the next screen one length that you know sets it, too.':
    'plain',
  'The drawing tells it. On the next screen one length that you know corrects it, if need be.': 'plain',
  'The next press is the': 'plain',
  'The other edges follow in their order.': 'plain',
  'The outlines of the drawing': 'plain',
  'The screen for a drawing': 'plain',
  'This edge of the back is the': 'plain',
  'This edge of the front is the': 'plain',
  'Two outlines look like a front and a back. Look whether they are the right way round.': 'plain',
  Undo: 'plain',
  'Use these blocks': 'trade',
  'What is missing': 'plain',
  'a guess': 'plain',
  'not picked yet': 'plain',
  'to be set': 'plain',
  'undo brings the others back': 'plain',
  'what was found is lit': 'plain',
  'when both are picked': 'plain',
  '{0} The left and right arrow keys go from corner to corner, with Shift by a millimetre.': 'plain', // {0} LANDMARK_WORDS[name].where
  '{0} long': 'plain', // {0} own(formatLength(reach, units))
  '{0} long, which no block is: look at the unit': 'trade', // {0} own(formatLength(reach, units))
  '“{0}” stays on this computer.': 'plain', // {0} own(fileName)
} as const;
