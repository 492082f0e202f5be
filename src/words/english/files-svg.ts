// Written by `npm run words`, save where each comes from.
export const filesSvg = {
  'Fitted blocks for {0}, net. One unit is one millimetre.': 'trade', // {0} own(project.body.label)
  'Lounge pant for {0}. One unit is one millimetre.': 'plain', // {0} own(project.body.label)
  '{0}: blocks': 'trade', // {0} own(project.name)
} as const;
