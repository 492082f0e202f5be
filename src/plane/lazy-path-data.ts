/** Loads the reader of path data: it is only wanted for what others drew. */
export const loadPathReader = async () => (await import('./path-data')).pathReader();
