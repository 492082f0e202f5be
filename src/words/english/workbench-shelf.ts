// Written by `npm run words`, save where each comes from.
export const workbenchShelf = {
  'This project is too long for a link: {0} letters, of which {1} arrive safely. Save it as a file instead.': 'plain', // {0} number(link.length, 0), {1} number(LONGEST_LINK, 0)
  'does not hold a whole project: was the address cut?': 'plain',
  'holds more than any project that fits into a link, {0} kB, and was not unpacked.': 'plain', // {0} number(MOST_UNPACKED / 1000, 0)
} as const;
