// Written by `npm run words`, save where each comes from.
export const workbenchWays = {
  'A finished pair, from the tape to the sewing: change it as you like.': 'trade',
  'A front and back that fit already, drawn or on paper.': 'plain',
  'Bring my own block': 'trade',
  'Draft for a body': 'plain',
  'Draft loose trousers or pyjama bottoms without side seams for any body, and print the pattern at true size.':
    'trade',
  'Drawing of my blocks': 'trade',
  'From a few measurements: waist, hip, rise and leg.': 'trade',
  'I measure in': 'plain',
  'Look at the example': 'plain',
  'Open a project that I have': 'plain',
  'The example stays as it is; you can look at it again from here.': 'plain',
  'The ways to begin': 'plain',
  '“{0}” is not kept on this computer: save it as a file before you begin anew.': 'plain', // {0} own(name)
  '“{0}” stays on this computer: you find it under Projects.': 'plain', // {0} own(name)
} as const;
