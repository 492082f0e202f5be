// A thread has no loader of its own for TypeScript on the least Node that we run on.
import { register } from 'tsx/esm/api';

register();
await import('./judge-worker.ts');
