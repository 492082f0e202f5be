import { clothOf } from '../../project';
import { tellSteps } from './told-steps';

/** From now on the working goes on to the cloth's steps. The lay comes late, with what shows it. */
export const tellClothSteps = (): void => tellSteps('cloth', stepsOfCloth);

const stepsOfCloth = (draft: Parameters<typeof clothOf>[0]) => clothOf(draft).working;
