// Written by `npm run words`, save where each comes from.
export const filesWork = {
  '{0}, {1} of {2}': 'plain', // {0} what, {1} number(index + 1), {2} number(count)
} as const;
