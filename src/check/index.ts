export type * from './check';
