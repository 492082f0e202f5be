export type * from './caution';
export { CAUTIONS_NOTE, cautionSource, cautions } from './cautions';
