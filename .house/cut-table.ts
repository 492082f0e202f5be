import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { measured } from '../tests/cut/measured';
import { groups } from '../tests/cut/people';
import { spreadsOf, tableText, verdictsOf } from '../tests/cut/table';
import { limitsHeld } from '../tests/cut/wanted';

// Drafts everybody of the two surveys with the choices of a new project and writes how the cut is spread over them:
// `npm run cut-table -- --out cut.md`. Beside it lies the same as `cut.json`, for comparing two cuts.

const { values } = parseArgs({
  options: { out: { type: 'string', default: 'cut.md' }, every: { type: 'string', default: '1' } },
});
const step = Number(values.every);
if (!Number.isInteger(step) || step < 1) throw new Error('--every must be a whole number from 1 on.');

const all = groups().map(({ name, people }) => {
  const began = Date.now();
  const one = measured({ name, people: people.filter((_, i) => i % step === 0) });
  const each = (Date.now() - began) / Math.max(1, one.rows.length + one.refused.length);
  console.log(`${name}: ${one.rows.length} drafted, ${one.refused.length} refused, ${each.toFixed(1)} ms each`);
  return one;
});

writeFileSync(values.out, tableText(all, `The cut on measured people${step > 1 ? `, every ${step}th` : ''}`));
const plain = all.map((one) => ({
  name: one.name,
  refused: one.refused,
  spreads: spreadsOf(one),
  verdicts: verdictsOf(one),
}));
const json = values.out.replace(/(\.md)?$/, '.json');
writeFileSync(json, `${JSON.stringify({ limits: limitsHeld(all), groups: plain }, null, 1)}\n`);
for (const { what, group, measured: found, holds, worst } of limitsHeld(all))
  console.log(`${holds ? 'holds' : 'DOES NOT HOLD'}: ${what}, ${group}: ${found.toFixed(2)} ${worst}`);
