// Written by `npm run words`, save where each comes from.
export const trace = {
  'are more than can be taken off this block.': 'trade',
  'drafted from the body': 'plain',
  'has {0} curves or straight parts, of {1} that a line may have: draw it with fewer points.': 'plain', // {0} number(count, 0), {1} number(MOST_EDGE_CURVES, 0)
  'is too short to be an edge.': 'plain',
  'must be drawn, as a line of that name.': 'plain',
  'must be marked.': 'plain',
  'must be one line; its {0} pieces don’t meet within {1}.': 'plain', // {0} number(pieces.length, 0), {1} mm(SAME_END)
  'must lie between the waist, {0}, and the hem, {1}.': 'trade', // {0} mm(waist.y), {1} mm(hem.y)
  'must start where {0} ends; they are {1} apart.': 'plain', // {0} own(before), {1} mm(gap)
  'needs at least one curve.': 'plain',
  'reaches farther than {0} from where the waist begins at the side; no block is that large.': 'trade', // {0} mm(FARTHEST)
  'your own, from a drawing': 'plain',
  'your own, from a photograph': 'plain',
} as const;
