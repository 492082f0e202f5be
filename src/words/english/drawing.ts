// Written by `npm run words`, save where each comes from.
export const drawing = {
  '“{0}” has letters that PDFs can’t show, and prints each as a question mark: {1}. Latin, Greek, Cyrillic, Armenian and Georgian letters print.':
    'plain', // {0} own(name), {1} shown
} as const;
