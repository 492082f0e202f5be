import { clothOf, tapingStepsOf } from '../../project';
import { tellSteps } from './told-steps';

/** From now on the working goes on to the cloth's steps and to the joining of the sheets. The lay comes late, with what shows it. */
export function tellClothSteps(): void {
  tellSteps('cloth', stepsOfCloth);
  tellSteps('paper', tapingStepsOf);
}

const stepsOfCloth = (draft: Parameters<typeof clothOf>[0]) => clothOf(draft).working;
