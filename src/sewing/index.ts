export type * from './caution';
export { CAUTIONS_NOTE, cautions } from './cautions';
