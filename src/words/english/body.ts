// Written by `npm run words`, save where each comes from.
export const body = {
  '0.93 × rise {0} + 0.39 × hip {1} + {2}, waist at the navel. Source: {3}.': 'plain', // {0} mm(body.bodyRise), {1} mm(body.hipGirth), {2} mm(32.6), {3} expected.source
  'High hip {0} lies halfway between waist {1} and hip {2}; it should measure {3} to {4}.': 'plain', // {0} mm(highHipGirth), {1} mm(waistGirth), {2} mm(hipGirth), {3} mm(least), {4} mm(most)
  'Inside leg {0} with body rise {1}: with that rise legs measure {2} to {3}. Measure both again, and look at the unit.':
    'plain', // {0} mm(insideLeg), {1} mm(bodyRise), {2} at(INSIDE_SHARE[0]), {3} at(INSIDE_SHARE[1])
  'Mind it; nothing was changed. Source: {0}.': 'plain', // {0} source
  'Nobody under two years was measured for the estimates: measure what can be measured.': 'plain',
  'Rise and inside leg together are {0}, the outside leg {1}; they should meet within {2}. One of the three was misread.':
    'plain', // {0} mm(sum), {1} mm(outsideLeg), {2} mm(SUM.more)
  'The crotch length was not measured; two bodies in three like this one lie within {0} of {1}. That is too wide to fit a crotch by, so nothing is drawn from it.':
    'plain', // {0} mm(expected.spread), {1} mm(expected.value)
  'The front part of the crotch length counts only beside the whole: measure that too.': 'plain',
  'The middle of {0} children of that age, each figure on its own (AnthroKids, UM-HSRI-77-17, 1977). Their inside leg is inferred from the fold of the seat, and children of today are heavier.':
    'plain', // {0} number(people)
  'The middle of {0} men {1}.': 'plain', // {0} number(people), {1} whose
  'The middle of {0} women {1}.': 'plain', // {0} number(people), {1} whose
  'These four decide the draft: waist {0}, hip {1}, body rise {2}, inside leg {3}.': 'plain', // {0} mm(body.waistGirth), {1} mm(body.hipGirth), {2} mm(body.bodyRise), {3} mm(body.insideLeg)
  'Waist to knee {0}: with this rise and inside leg the knee lies {1} to {2} below the waist.': 'plain', // {0} mm(waistToKnee), {1} at(KNEE_SHARE[1]), {2} at(KNEE_SHARE[0])
  'the front part must be less than the whole crotch length of {0}.': 'plain', // {0} mm(crotchLength)
  "the fullest hip can't lie more than {0} below the seat; the body rise is {1}.": 'plain', // {0} mm(HIP_BELOW_SEAT), {1} mm(bodyRise)
  'whose hip lies within {0} of it, each figure on its own, the waist at the navel (ANSUR II, NATICK/TR-15/007, 2014)':
    'plain', // {0} mm(25)
  'with this rise and inside leg the knee lies between {0} and {1} below the waist.': 'plain', // {0} mm(lowest), {1} mm(highest)
  '{0} is needed: {1}{2}': 'plain', // {0} m.name, {1} m.definition.charAt(0).toLowerCase(), {2} m.definition.slice(1)
  '{0} must lie between {1} and {2}.': 'plain', // {0} m.name, {1} limit(m.lowest), {2} limit(m.highest)
  '{0} was not measured, and no survey of children measured it; by adults’ proportions two in three lie within {1} of {2}.':
    'plain', // {0} name, {1} mm(spread), {2} mm(value)
  '{0} was not measured; two bodies in three like this one lie within {1} of {2}.': 'plain', // {0} name, {1} mm(spread), {2} mm(value)
  '{0} {1} beside {2} {3}: people so measured have {4} to {5}. Measure both again.': 'plain', // {0} nameOf(part), {1} mm(value), {2} lowerName(of), {3} mm(whole), {4} mm(lowest * whole), {5} mm(highest * whole)
} as const;
