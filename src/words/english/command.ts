// Written by `npm run words`, save where each comes from.
export const command = {
  "can't be read: {0}.": 'plain', // {0} reason
  'has letters that are not UTF-8, or is cut off within one; save it as UTF-8.': 'standard: UTF-8, RFC 3629',
  'is a folder, not a file.': 'plain',
  'is empty.': 'plain',
  'is larger than the {0} MB that a file may have.': 'plain', // {0} number(LARGEST_FILE / 1e6, 0)
  'is no plain file; name one, or give a project through - instead.': 'plain',
  'there is no such file.': 'plain',
  'was written to while it was read; try again once it is done.': 'plain',
} as const;
