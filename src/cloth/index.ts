export { LAYOUT_WORDS } from './answer';
export { placedPoint } from './placed';
export { type ClothChoices, type ClothPlan, clothPlan, clothWidths, type OtherCloth } from './plan';
export { SELVEDGE } from './table';
export type * from './types';
export type { WidthAnswer } from './widths';
