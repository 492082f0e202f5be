// Written by `npm run words`, save where each comes from.
export const filesNest = {
  'a nested drawing needs two projects or more': 'plain',
  'at most {0} bodies can be told apart on one drawing; these are {1}': 'plain', // {0} number(MOST_NESTED), {1} number(drafts.length)
} as const;
