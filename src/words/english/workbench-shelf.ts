// Written by `npm run words`, save where each comes from.
export const workbenchShelf = {
  'This project is too long for a link: {0} letters, of which {1} arrive safely. Save it as a file instead.': 'plain', // {0} number(link.length, 0), {1} number(LONGEST_LINK, 0)
  'about to be kept': 'plain',
  'an example: change it and it is kept': 'plain',
  'at some time': 'plain',
  'does not hold a whole project: was the address cut?': 'plain',
  'holds more than any project that fits into a link, {0} kB, and was not unpacked.': 'plain', // {0} number(MOST_UNPACKED / 1000, 0)
  'just now': 'plain',
  'kept on this computer, {0}': 'plain', // {0} ago(now - at)
  'not kept: no room on this computer': 'plain',
  'not kept: save it as a file': 'plain',
  'open in another tab': 'plain',
} as const;
