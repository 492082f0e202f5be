import { freshSheetsOf } from '../../project';
import { tellSheets } from './told-sheets';

/** From now on it is told how many sheets a draft takes. That comes late: the first drawing needs none of it. */
export const tellFreshSheets = (): void => tellSheets(freshSheetsOf);
