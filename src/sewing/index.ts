export type * from './caution';
export { CAUTIONS_NOTE, cautionSource, cautions } from './cautions';
export type { Garment, SewingMachine } from './garment';
export type { Face, PictureItem, PictureLine, PicturePanel, StepPicture } from './pictures/picture';
export { layPicture } from './pictures/scene-lay';
export { stepPicture } from './pictures/step-picture';
export type { EdgeWork, FinishedHow, Setting, SewingPart, SewingStep, SewnHow } from './step';
export { stepMinutes } from './step';
export { sewingMinutes, sewingSteps } from './steps';
