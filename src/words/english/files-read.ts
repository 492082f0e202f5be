// Written by `npm run words`, save where each comes from.
export const filesRead = {
  'can’t be read as a transform.': 'plain',
  'draws its blocks in more than {0} lines.': 'trade', // {0} number(reading.most, 0)
  'has a line of more than {0} points, far more than a drawing of blocks.': 'trade', // {0} number(MOST_PAIRS / 2, 0)
  'has a style sheet of more than {0} kB.': 'plain', // {0} number(LARGEST_SHEET / 1000, 0)
  'has a style sheet that hides or moves lines by more than {0} rules.': 'plain', // {0} number(MOST_RULES, 0)
  'has an element of more than {0} attributes.': 'plain', // {0} number(MOST_ATTRIBUTES, 0)
  'has an end that isn’t written in plain numbers.': 'plain',
  'has more than {0} curves, far more than a drawing of blocks.': 'trade', // {0} number(MOST_CURVES, 0)
  'has more than {0} elements, far more than a drawing of blocks.': 'trade', // {0} number(MOST_ELEMENTS, 0)
  'has no line of a block by its name: call the lines front-waist, front-centre, front-crotch and so on, as in the drawing of the blocks that Legwork writes.':
    'ours: the name',
  'has no line that can be read.': 'plain',
  'has no true size: the width of the drawing must be given in mm, cm, in, pt or pc.': 'plain',
  'has parts inserted in each other more than {0} deep; no drawing of blocks has.': 'trade', // {0} number(DEEPEST, 0)
  'inserts more than {0} parts, far more than a drawing of blocks.': 'trade', // {0} number(MOST_INSERTED, 0)
  'is a style of more than {0} letters.': 'plain', // {0} number(LONGEST_STYLE, 0)
  'is drawn by reference (use), which isn’t read; draw the line itself.': 'plain',
  'is moved by its style ({0}), which isn’t read; move it by the attribute “transform” alone.': 'plain', // {0} own(plainWords(how))
  'is nested more than {0} levels deep; no drawing of blocks is.': 'trade', // {0} number(DEEPEST, 0)
  'is no DXF drawing that can be read: a group code isn’t a number.': 'standard: the DXF format',
  'is no DXF drawing that can be read: it has no section.': 'standard: the DXF format',
  'is no SVG drawing that can be read: {0}.': 'standard: SVG, W3C', // {0} own(plainWords(why))
  'is no viewBox: it takes four numbers, the last two above 0.': 'standard: SVG, W3C',
  'is wider than any drawing of blocks: the width must be given in mm, cm, in, pt or pc, and be at most 20 m.': 'trade',
  'lies in a drawing within the drawing whose size isn’t written in plain numbers.': 'plain',
  'stands in the {0} “{1}” and can’t be read as a path.': 'plain', // {0} own(element), {1} own(plainWords(name))
} as const;
