// How a draft came about is told late: its first drawing needs none of it.
import { workingOf } from '../../project';
import { tellSteps } from './told-steps';

tellSteps('draft', workingOf);
