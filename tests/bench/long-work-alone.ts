import { readFileSync } from 'node:fs';
import { LONG_WORK, longWork } from './long-work';

// Run in a process of its own, so that its memory is this work's alone; prints what it came to.
const font = readFileSync(new URL('../../public/fonts/legwork-print.ttf', import.meta.url));
const name = Object.keys(LONG_WORK).find((known) => known === process.argv[2]) as keyof typeof LONG_WORK | undefined;
if (name === undefined) throw new Error('which long work?');
const done = await longWork(name, font, () => process.memoryUsage().rss);
console.log(JSON.stringify({ ...done, memory: process.resourceUsage().maxRSS * 1024 }));
