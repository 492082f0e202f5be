/** Loads the reader of path data and, with it, the vector engine. */
export const loadPathReader = async () => (await import('./path-data')).pathDataRuns;
