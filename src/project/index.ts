export { allowanceStepsOf } from './allowance-steps';
export { valueAt, withValue } from './at-path';
export { changedSince } from './changed-since';
export { checksOf } from './checks';
export { clothOf, clothWidthsOf, oneWayClothOf } from './cloth';
export { draft } from './draft';
export type * from './draft-types';
export { exampleProject } from './example';
export {
  FIELD_LIMITS,
  FIELDS_BY_PATH,
  type FieldPath,
  fieldName,
  fieldSentence,
  groupAnew,
  type Limits,
  type ProjectPath,
  unusualFields,
} from './fields';
export { freshSheetsOf, withFewestSheets } from './fresh-sheets';
export { type Habits, habitsOf, METRIC } from './habits';
export { hemAboveFloor, hemEnds } from './hem-ends';
export { hemOf } from './hem-of';
export { lastPrintTakenBack, printDay, withoutLastPrint } from './last-print';
export { measureTold } from './measure-told';
export { exampleOf, NEEDED, newProject } from './new-project';
export { withLastPrint } from './note-print';
export { LARGEST_FILE, type Opened, openProject, saveProject, tooLarge } from './open';
export { applyRemedy } from './remedy';
export { type Repair, type Salvaged, salvageProject } from './salvage';
export { type ClothSaving, clothSavingsOf, inOrder, savingQuestions, WORTH_SAVING } from './savings';
export { garmentOf, pictureOf, sewingOf } from './sewing';
export { leastChanges, type SheetSaving, sheetSavingQuestions } from './sheet-savings';
export { reprintOf, sheetsOf } from './sheets';
export { notionsToBuy, shoppingOf } from './shopping';
export { STATION_NAMES, STATIONS, type Station } from './stations';
export { tapingStepsOf } from './taping-steps';
export type * from './types';
export { workingOf } from './working';
