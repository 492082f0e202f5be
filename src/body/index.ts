export { type BodyInput, bodyProblems, prepareBody } from './body';
export { type Measurement, measurements } from './catalogue';
export { estimateMissing } from './estimate';
export type * from './types';
export { bodyWorking } from './working';
