// The lay is loaded late, with what shows it; from then on the working goes on to the cloth's steps.
import { clothOf } from '../../project';
import { tellSteps } from './told-steps';

tellSteps('cloth', (draft) => clothOf(draft).working);
