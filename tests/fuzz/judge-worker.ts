import { parentPort } from 'node:worker_threads';
import { judged, type Look } from './judge';
import { projectDrawn, type RawDraw } from './projects';

/** What is to be judged: the draw of a seed, or a project. */
export type Task = { readonly seed: number; readonly look: Look } | { readonly project: RawDraw; readonly look: Look };

const port = parentPort;
if (!port) throw new Error('This is a worker; judging.ts starts it.');

port.on('message', (task: Task) => {
  void (async () => {
    const project = 'seed' in task ? projectDrawn(task.seed) : task.project;
    // Told before it is judged: of what never ends at least the project is known.
    port.postMessage({ project });
    port.postMessage({ judged: await judged(project, task.look) });
  })();
});

port.postMessage('ready');
