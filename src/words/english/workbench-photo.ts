// Written by `npm run words`, save where each comes from.
export const workbenchPhoto = {
  'A to B {0}, A to D {1}, E to F {2}': 'plain', // {0} mm(REFERENCE.width), {1} mm(REFERENCE.height), {2} mm(REFERENCE.check)
} as const;
