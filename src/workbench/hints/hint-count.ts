/** So many hints there are; when all were put away, nothing of them is loaded again. */
export const HINT_COUNT = 3;
