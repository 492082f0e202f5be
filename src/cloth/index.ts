export { grainPlace, type LaidRow, laidName, laidRows } from './grain-place';
export { clothOfPiece } from './kinds';
export { LAYER_WORDS, LAYOUT_WORDS } from './layout-words';
export { NEEDLES, TWIN_NEEDLE } from './needles';
export { placedPoint } from './placed';
export { type ClothChoices, type ClothPlan, clothPlan, clothWidths, type OtherCloth } from './plan';
export { openingPatch, type ShoppingItem, type ShoppingQuestion, shoppingList } from './shopping';
export type * from './types';
export type { WidthAnswer } from './widths';
