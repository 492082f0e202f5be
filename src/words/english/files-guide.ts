// Written by `npm run words`, save where each comes from.
export const filesGuide = {
  'All steps at a glance': 'plain',
  'Before sewing': 'trade',
  'Check:': 'plain',
  Checks: 'plain',
  Cut: 'trade',
  Finished: 'ours: finished, of the garment, beside the body',
  'Finished measures': 'ours: a finished measure, of the garment',
  'Last of all': 'plain',
  'Legwork · how to sew it, with cloth and shopping list · {0}': 'ours: the name', // {0} own(project.body.label)
  'Legwork · the working, step by step · {0}': 'ours: the working, the derivation that is shown', // {0} own(plainWords(project.body.label))
  'Machine: a plain machine with zigzag.': 'trade',
  'Machines: an overlocker, and a plain machine beside it.': 'plain',
  Measurements: 'plain',
  'On other widths': 'plain',
  Sewing: 'trade',
  Sources: 'plain',
  'Stitch settings come from practice, too.': 'trade',
  'Take care:': 'plain',
  'The hems': 'trade',
  'The lay': 'trade',
  'The two main seams': 'ours: a part of the order of work',
  'The waist': 'trade',
  'Where cloth is saved': 'trade',
  'Where each piece lies': 'plain',
  'While the legs lie flat': 'ours: a part of the order of work',
  'Why:': 'plain',
  'does not fit': 'plain',
  'each leg, {0} long as cut': 'plain', // {0} mm(height)
  '{0} wide': 'plain', // {0} mm(widthOf(other))
  '{0} wide, one-way cloth': 'trade', // {0} mm(widthOf(answer))
  '{0}, {1} % waste': 'plain', // {0} amount(answer.lay.toBuy), {1} number(100 * answer.lay.waste, 0)
  '{0}: how to sew it': 'trade', // {0} own(guide.title)
  '{0}: the working': 'ours: the working, the derivation that is shown', // {0} own(title)
} as const;
