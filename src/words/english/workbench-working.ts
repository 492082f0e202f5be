// Written by `npm run words`, save where each comes from.
export const workbenchWorking = {
  'how?': 'plain',
  '{0}: how?': 'plain', // {0} fieldName(path)
} as const;
