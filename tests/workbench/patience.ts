import { configure } from '@testing-library/react';

// How long a test waits for what comes a moment later, milliseconds: on a busy machine a moment is long.
configure({ asyncUtilTimeout: 30_000 });
