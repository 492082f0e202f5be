import { parentPort } from 'node:worker_threads';
import { damagedFile } from './cases';
import { judged } from './judge';

const port = parentPort;
if (!port) throw new Error('This is a worker; judging.ts starts it.');

port.on('message', (task: { readonly seed: number; readonly byCommand: boolean }) => {
  void judged(damagedFile(task.seed), task.byCommand).then((answer) => port.postMessage(answer));
});

port.postMessage('ready');
