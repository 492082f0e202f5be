import { workingOf } from '../../project';
import { tellSteps } from './told-steps';

/** From now on it is told how a draft came about. That comes late: the first drawing needs none of it. */
export const tellDraftSteps = (): void => tellSteps('draft', workingOf);
