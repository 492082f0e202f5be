// Written by `npm run words`, save where each comes from.
export const block = {
  ' + crotch fit {0}': 'trade', // {0} part(fit)
  ' For a full thigh over a near knee the inseams are let out by {0}, or the crotch would end in a hook.': 'trade', // {0} mm(letOut)
  ' − crotch fit {0}': 'trade', // {0} part(-fit)
  '; the belly is {0} fuller than the hip, and where centre front’s lean and the usual spread don’t make enough room each leg is widened, here by {1}: {2} of it to the front, {3} to the back':
    'trade', // {0} mm(abdomen), {1} mm(widened), {2} number(ABDOMEN.front), {3} number(ABDOMEN.back)
  '; the crotch fit moved them by {0} and {1}': 'trade', // {0} mm(front), {1} mm(back)
  'A waist that dips in front shows a prominent abdomen: the centre front waist is {0} higher.': 'trade', // {0} mm(amount)
  'At centre back the waist rises {0}, so that it stays up when sitting; at centre front it drops {1}. Centre back stands {2} + {3}{4} = {5} above centre front.':
    'trade', // {0} part(p.backRaise), {1} part(p.frontDrop), {2} part(p.backRaise), {3} part(p.frontDrop), {4} rounding(tilt, p.backRaise, p.frontDrop), {5} part(tilt)
  'At centre back the waist rises {0}, so that it stays up when sitting; at centre front it rises {1}. Centre back stands {2} − {3}{4} = {5} above centre front.':
    'trade', // {0} part(p.backRaise), {1} part(-p.frontDrop), {2} part(p.backRaise), {3} part(-p.frontDrop), {4} rounding(tilt, p.backRaise, p.frontDrop), {5} part(tilt)
  'At the hip the front is {0} wide and the back {1}; two of each make the hip and some room: 2 × ({2} + {3}){4} = {5} = {6} {7}{8}.':
    'plain', // {0} part(p.frontWidth), {1} part(p.backWidth), {2} part(p.frontWidth), {3} part(p.backWidth), {4} rounding(around, { mm: p.frontWidth, times: 2 }, { mm: p.backWidth, times: 2 }), {5} part(around), {6}
  'Between the legs the front is extended by {0}, the back by {1}.': 'plain', // {0} mm(p.extensionFront), {1} mm(p.extensionBack)
  'Centre front leans outwards by {0}, over the belly.': 'trade', // {0} mm(leanOut)
  'Centre front stands upright.': 'trade',
  'Cloth that pools above the seat shows a hollow back: the centre back waist is {0} lower.': 'trade', // {0} mm(amount)
  'Drags at the knee: both inseams are let in there by {0}.': 'trade', // {0} mm(-amount)
  'Drags at the knee: both inseams are let out there by {0}.': 'trade', // {0} mm(amount)
  'Drags from the seat show a full seat: centre back is {0} higher, the back extension {1} longer.': 'trade', // {0} mm(backUp), {1} mm(backOut)
  'Each crotch curve leaves its centre line without a corner and meets its own inseam squarely, so that the two run on smoothly when sewn.':
    'trade',
  'Folds under the seat show a flat seat: the back extension and the back rise are {0} shorter.': 'trade', // {0} mm(amount)
  'It is worn sitting: {0}.': 'plain', // {0} inTurn(moved, ', ')
  'It pulls down when sitting: centre back is {0} higher, and since the waist edge may tilt no further, the back extension is {1} longer. Centre front stays.':
    'trade', // {0} mm(backUp), {1} mm(backOut)
  'It pulls down when sitting: centre back is {0} higher. Centre front stays.': 'trade', // {0} mm(backUp)
  'Its front part comes out {0} off what was measured.': 'plain', // {0} mm(frontRest)
  'Lines towards the crotch show full thighs: both extensions are {0} longer.': 'trade', // {0} mm(amount)
  'New Mexico State University C-209, quoted: ½ to 1 in by the hip; 6 mm more to lounge in, practice': 'source',
  'Source: {0}.': 'source', // {0} WAIST_SOURCE
  'The Practical Designer, 1911 and 1918: hip/16 to hip/12 in front; behind hip/8, practice; ANSUR II': 'source',
  'The Practical Designer, 1918: ½ in in front; behind hip/24 on lesson slides; here less, practice; ANSUR II':
    'source',
  'The back crotch point is dropped by {0}, so that both inseams are equally long.': 'trade', // {0} mm(blocks.backCrotchDrop)
  'The blocks are your own: the crotch lies {0} below the waist at the side, extended by {1} in front and {2} behind.':
    'trade', // {0} mm(front.crotchLevel), {1} mm(extensionFront), {2} mm(extensionBack)
  'The crotch line lies {0} below the waist: the body rise and room to sit.': 'trade', // {0} mm(p.crotchLevel)
  'The crotch was fitted until the finished leg measures {0}, the measured length and its ease.': 'trade', // {0} mm(wanted + rest)
  'The difference between hip and waist is shared out: centre back leans {0}, each side takes {1}, darts the rest. {2}':
    'trade', // {0} mm(p.leanBack), {1} mm(p.side), {2} frontWords(p.leanOut)
  'The hip line is drawn {0} below the waist, {1} higher than measured, to stay clear of the crotch line and of the waist.':
    'trade', // {0} mm(hipLevel), {1} mm(hipRaised)
  'The hip line is drawn {0} below the waist, {1} lower than measured, to stay clear of the crotch line and of the waist.':
    'trade', // {0} mm(hipLevel), {1} mm(-hipRaised)
  'The hip line lies {0} below the waist, where the seat is fullest.': 'trade', // {0} mm(hipLevel)
  'The knee line lies {0} below the waist; the block is {1} round there, {2} at the ankle.{3}': 'trade', // {0} mm(p.kneeLevel), {1} mm(knee), {2} mm(p.hemFront + p.hemBack + letOut), {3} letOutPart(letOut)
  'The wanted crotch length of {0} is missed by {1}, although raise, depth and forks were moved as far as a cutter would: measure rise and crotch length again.':
    'trade', // {0} mm(wanted), {1} mm(rest)
  'Their inseams are {0} and {1} long; the back crotch point lies {2} below the front’s.': 'trade', // {0} mm(inseam(front)), {1} mm(inseam(back)), {2} mm(backCrotchDrop)
  'a quarter of hip + ease, {0}, less {1} in front and as much more behind{2}': 'trade', // {0} mm(quarter), {1} part(options.balance * p.k), {2} abdomenPart(p)
  'body rise {0} + ease {1}{2}{3} = {4}. Source: {5}.': 'trade', // {0} part(body.bodyRise), {1} part(p.riseEase - p.fitDepth), {2} fitPart(p.fitDepth), {3} rounding(p.crotchLevel, body.bodyRise, p.riseEase - p.fitDepth, fitTold(p.fitDepth)), {4} part(p.crotchLevel),
  'centre back {0} higher': 'trade', // {0} mm(backUp)
  'centre front is {0} lower': 'trade', // {0} mm(-frontUp)
  'knee {0} + {1}{2}{3} = {4}': 'plain', // {0} part(body.kneeGirth), {1} part(KNEE_EASE * p.k), {2} letOut < TOLD ? UNSAID : say` + ${part(letOut)}`, {3} rounding(knee, body.kneeGirth, KNEE_EASE * p.k, letOut < TOLD ? 0 : letOut), {4} part(kne
  'longer forks': 'trade',
  'moved: {0}': 'plain', // {0} stagesGone(fit, p)
  'nothing had to be moved': 'plain',
  'shorter forks': 'trade',
  'since the waist edge may tilt no further, the back extension is {0} longer': 'trade', // {0} mm(backOut)
  'the crotch line down by {0}': 'trade', // {0} depth
  'the crotch line up by {0}': 'trade', // {0} depth
  'the leg is {0} longer': 'plain', // {0} mm(longer)
  'the waist down (centre back by {0})': 'trade', // {0} raise
  'the waist up (centre back by {0})': 'trade', // {0} raise
  'then {0}': 'plain', // {0} one
  '{0} can’t be taken in and stay in the waist.': 'plain', // {0} mm(p.shapingLeft)
  '{0} of {1} and {2} of {3}, the widths without a belly{4}. Source: {5}.': 'plain', // {0} number(FORK.front.usual), {1} mm(p.frontNet), {2} number(FORK.back.usual), {3} mm(p.backNet), {4} forkFitPart(p), {5} FORK_SOURCE
} as const;
