// Written by `npm run words`, save where each comes from.
export const filesPdf = {
  '4. If a bar is off by more than {0} %, look for a setting that fits the page to the paper first.': 'plain', // {0} { number: 3, decimals: 0 }
  'a piece is {0} long even at a quarter, longer than any paper.': 'plain', // {0} mm(widest)
  '{0} would be {1} long; a PDF page can be {2} at most: take the joined sheets instead': 'plain', // {0} what, {1} mm(longest), {2} mm(LARGEST_PAGE)
  '{0}, cut {1}': 'plain', // {0} pieceName(piece), {1} number(piece.cut)
} as const;
