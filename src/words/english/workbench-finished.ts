// Written by `npm run words`, save where each comes from.
export const workbenchFinished = {
  '1 check is good': 'plain',
  '1 sheet {0} and a first sheet': 'plain', // {0} name
  '; on the left {0}': 'plain', // {0} mm(left.measures[key])
  'All {0} checks are good': 'plain', // {0} number(all, 0)
  'Chalk lines': 'ours: a chalk line, an outline that is kept',
  'Keep this outline as a chalk line': 'ours: a chalk line, an outline that is kept',
  'Kept as {0}.': 'plain', // {0} own(lines.at(-1)?.name ?? '')
  'Name of the chalk line': 'ours: a chalk line, an outline that is kept',
  'Rubbed out: {0}.': 'ours: chalk is rubbed out', // {0} own(name)
  'The chalk lines': 'ours: a chalk line, an outline that is kept',
  'What the pair will measure, and whether it is good, stands here once the measurements are in.': 'plain',
  'allowance {0}': 'trade', // {0} mm(allowances.inseam)
  'body {0} + {1}{2}': 'plain', // {0} mm(body), {1} part(more), {2} plus
  'body {0} − {1}{2}': 'plain', // {0} mm(body), {1} part(-more), {2} plus
  'casing of its own': 'trade',
  'drafted · crotch length missed by {0}': 'trade', // {0} mm(miss)
  'drafted · crotch length not measured': 'trade',
  'drafted · crotch length reached': 'trade',
  'drawstring casing': 'trade',
  'drawstring hem': 'trade',
  'elastic casing': 'trade',
  'elastic hem': 'trade',
  'foot {0}{1}': 'plain', // {0} mm(body.footEntryGirth), {1} other('hemGirthFinished')
  'hangs {0} below the body': 'plain', // {0} mm(below)
  'hem faced': 'trade',
  'hem turned': 'trade',
  hide: 'plain',
  'how?': 'ours: how?, the working of a number',
  'just passes': 'plain',
  'last saved for printing on {0}, on {1} sheets {2}': 'plain', // {0} was, {1} number(lastPrint.sheets.length, 0), {2} own(lastPrint.paper.name)
  'not measured': 'plain',
  'one direction (nap)': 'trade',
  'passes by {0}': 'plain', // {0} mm(spare)
  'rub out': 'ours: chalk is rubbed out',
  'scale {0}': 'plain', // {0} number(project.paper.scale, 3)
  show: 'plain',
  'step by step, on a plain machine': 'trade',
  'step by step, with an overlocker': 'plain',
  'then change things, and see both measured': 'plain',
  'to cut, for one row': 'plain',
  'to pass {0} + {1}{2}': 'plain', // {0} mm(pullOnNeeded), {1} part(spare), {2} plus
  'to pass {0} − {1}{2}': 'plain', // {0} mm(pullOnNeeded), {1} part(-spare), {2} plus
  'too small by {0}': 'plain', // {0} mm(-spare)
  'true size': 'plain',
  'waist {0} · hip {1} · rise {2} · inside leg {3}': 'trade', // {0} mm(body.waistGirth), {1} mm(body.hipGirth), {2} mm(body.bodyRise), {3} mm(body.insideLeg)
  'washed first': 'trade',
  'where on the drawing?': 'plain',
  '{0} above the body’s crotch': 'trade', // {0} mm(-below)
  '{0} checks are good': 'plain', // {0} number(good, 0)
  '{0} doubtful': 'plain', // {0} number(body.remarks.length, 0)
  '{0} good': 'ours: a verdict, good, doubtful or wrong', // {0} number(good, 0)
  '{0} sheets {1} and a first sheet': 'plain', // {0} number(many, 0), {1} name
  '{0} wrong': 'ours: a verdict, good, doubtful or wrong', // {0} number(wrong, 0)
  '{0} {1} {2}: how?': 'ours: how?, the working of a number', // {0} name, {1} own(value), {2} own(unit)
  '{0}, spread {1}, opening {2}': 'trade', // {0} name, {1} mm(measures.spread), {2} passing(measures)
  '{0}: now {1}.': 'plain', // {0} check.name, {1} VERDICT_NAMES[check.verdict]
} as const;
