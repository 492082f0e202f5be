import { readFileSync } from 'node:fs';
import { measurements } from '../../src/body';
import { CLASS_KINDS, carriedOut, classWork, readClass } from '../../src/files';
import { csvFile, measurementHead, measurementText } from '../../src/files/class/write-table';
import { exampleProject } from '../../src/project';
import { benchProjects } from './bodies';
import type { LongWork } from './long-work';

// Run in a process of its own, so that its memory is this work's alone: a class of as many rows as its first word says.
const count = Number(process.argv[2]);
const font = readFileSync(new URL('../../public/fonts/legwork-print.ttf', import.meta.url));
const rows = benchProjects(count).map(({ body }) => [
  body.label,
  ...measurements.map((m) => measurementText(m, body, 'cm')),
]);
const text = csvFile([['Name', ...measurements.map((m) => measurementHead(m, 'cm'))], ...rows]);
const start = performance.now();
const read = await readClass(new TextEncoder().encode(text), exampleProject);
if (!read.ok) throw new Error('the bench table was refused');
let [bytes, told, silence, last] = [0, 0, 0, start];
// Nothing is kept of what is written, as where it goes to the disk.
const write = (part: Uint8Array) => {
  bytes += part.length;
};
const order = { table: read.value, project: exampleProject, kinds: CLASS_KINDS };
const members = await carriedOut(await classWork(order, { font, date: new Date(0) }, write), {
  onProgress: () => {
    const now = performance.now();
    silence = Math.max(silence, now - last);
    last = now;
    told += 1;
  },
});
const done: LongWork = {
  name: `a class of ${count} rows`,
  seconds: (performance.now() - start) / 1000,
  files: 2 * members.length,
  pages: members.reduce((sum, { sheets, figures }) => sum + (figures ? sheets + 3 : 0), 0),
  bytes,
  told,
  silence,
  memory: process.resourceUsage().maxRSS * 1024,
};
console.log(JSON.stringify(done));
