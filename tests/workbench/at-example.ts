import { useBench } from '../../src/workbench/store/bench';

/**
 * The workbench as somebody has it who looked at the example and changed nothing: where tests of the page begin, without
 * going in by the front door each time.
 */
export const atExample = Object.assign(useBench.getInitialState(), { begun: true });
