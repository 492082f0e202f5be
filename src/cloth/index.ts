export { LAYOUT_WORDS } from './answer';
export { placedPoint } from './placed';
export { type ClothChoices, type ClothPlan, clothPlan, clothWidths, type OtherCloth } from './plan';
export { type ShoppingItem, type ShoppingQuestion, shoppingList } from './shopping';
export type * from './types';
export type { WidthAnswer } from './widths';
