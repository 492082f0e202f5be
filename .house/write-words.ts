// Writes the catalogue of all words (src/words/english) anew from the source.
import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { english } from '../src/words/english';
import { type Gathered, gatheredWords } from './gather-words';
import { root } from './paths.mjs';

const folder = join(root, 'src/words/english');
const known: Readonly<Record<string, string>> = english;
const gathered = gatheredWords();

const messages = firstOfEach(gathered);
const rooms = [...new Set(messages.map(roomOf))].sort();
for (const name of readdirSync(folder)) rmSync(join(folder, name));
mkdirSync(folder, { recursive: true });
for (const room of rooms)
  writeFileSync(
    join(folder, `${room}.ts`),
    catalogueText(
      room,
      messages.filter((one) => roomOf(one) === room),
    ),
  );
writeFileSync(join(folder, 'index.ts'), indexText(rooms));
const tidied = spawnSync('npx', ['biome', 'check', '--write', folder], { cwd: root, encoding: 'utf8' });
if (tidied.status !== 0) throw new Error(tidied.stderr);
const fresh = gathered.filter(({ template }) => !(template in known)).length;
console.log(`${gathered.length} messages, ${fresh} of them new: say where each comes from, if it isn’t plain English.`);

/** A message that stands in several places is listed with the first of them. */
function firstOfEach(all: readonly Gathered[]): readonly Gathered[] {
  return [...new Map(all.toReversed().map((one) => [one.template, one])).values()].toReversed();
}

/** `src/check/fixes.ts` is of `check`; the large rooms are taken folder by folder, and the steps of the sewing by themselves. */
function roomOf({ file }: Gathered): string {
  const [, room = '', ...inner] = file.split('/');
  if (room === 'sewing' && inner[0]?.startsWith('steps-')) return 'sewing-steps';
  return ['files', 'sewing', 'workbench'].includes(room) && inner.length > 1 ? `${room}-${inner[0]}` : room;
}

function catalogueText(room: string, its: readonly Gathered[]): string {
  const lines = its
    .toSorted((a, b) => (a.template < b.template ? -1 : 1))
    .map(({ template, values }) => {
      const told = values.map((value, i) => `{${i}} ${value}`).join(', ');
      return `${JSON.stringify(template)}: ${JSON.stringify(known[template] ?? 'plain')},${told && ` // ${told.slice(0, 200)}`}`;
    });
  return `// Written by \`npm run words\`, save where each comes from.\nexport const ${nameOf(room)} = {\n${lines.join('\n')}\n} as const;\n`;
}

function indexText(names: readonly string[]): string {
  const imports = names.map((room) => `import { ${nameOf(room)} } from './${room}';`).join('\n');
  return `// Written by \`npm run words\`.\n${imports}\n\n/** Every message, by its template, with where it comes from: \`plain\` English, the \`trade\`, a standard that is named, or ours. */\nexport const english = {\n${names.map((room) => `...${nameOf(room)},`).join('\n')}\n} as const;\n`;
}

function nameOf(room: string): string {
  return room.replace(/-(\p{L})/gu, (_, letter: string) => letter.toUpperCase());
}
