import './at-example';
import { configure } from '@testing-library/react';
import { tellDraftSteps } from '../../src/workbench/store/working-told';

// How long a test waits for what comes a moment later, milliseconds: on a busy machine a moment is long.
configure({ asyncUtilTimeout: 30_000 });

// What the page is told right after it has come.
tellDraftSteps();
