export { groupAnew } from './anew';
export { FIELDS, MAY_BE_NONE, ROOT_FIELDS } from './fields';
export { type Field, type Limits, usualValue } from './kinds';
export { fieldName } from './names';
export {
  type Choices,
  FIELD_LIMITS,
  FIELDS_BY_PATH,
  type FieldPath,
  GROUPS,
  type GroupName,
  type ProjectPath,
} from './paths';
export { fieldSentence } from './sentences';
export { unusualFields } from './unusual';
export { figureWanted, LONGEST_TEXT, measurementWanted, wantedOf } from './wanted';
