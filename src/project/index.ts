export type * from './draft-types';
export type * from './types';
