// Writes the catalogue of all words (src/words/english) and its list (docs/labels.md) anew from the source.
import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { english } from '../src/words/english';
import { type Gathered, gatheredWords, wordsByRoom } from './gather-words';
import { labelsText } from './labels';
import { originOf } from './origins';
import { root } from './paths.mjs';

const folder = join(root, 'src/words/english');
const known: Readonly<Record<string, string>> = english;
const gathered = gatheredWords();

const rooms = wordsByRoom(gathered);
for (const name of readdirSync(folder)) rmSync(join(folder, name));
mkdirSync(folder, { recursive: true });
for (const [room, its] of rooms) writeFileSync(join(folder, `${room}.ts`), catalogueText(room, its));
writeFileSync(join(folder, 'index.ts'), indexText([...rooms.keys()]));
const labels = join(root, 'docs/labels.md');
const origins = Object.fromEntries(gathered.map(({ template }) => [template, origin(template)]));
writeFileSync(labels, labelsText(readFileSync(labels, 'utf8'), rooms, origins));
const tidied = spawnSync('npx', ['biome', 'check', '--write', folder], { cwd: root, encoding: 'utf8' });
if (tidied.status !== 0) throw new Error(tidied.stderr);
const fresh = gathered.filter(({ template }) => !(template in known)).length;
console.log(`${gathered.length} messages, ${fresh} of them new: look where each is said to come from.`);

function origin(template: string): string {
  return originOf(template, known[template]);
}

function catalogueText(room: string, its: readonly Gathered[]): string {
  const lines = its.map(({ template, values }) => {
    const told = values.map((value, i) => `{${i}} ${value}`).join(', ');
    return `${JSON.stringify(template)}: ${JSON.stringify(origin(template))},${told && ` // ${told.slice(0, 200)}`}`;
  });
  return `// Written by \`npm run words\`, save where each comes from.\nexport const ${nameOf(room)} = {\n${lines.join('\n')}\n} as const;\n`;
}

function indexText(names: readonly string[]): string {
  const imports = names.map((room) => `import { ${nameOf(room)} } from './${room}';`).join('\n');
  return `// Written by \`npm run words\`.\n${imports}\n\n/** Every message, by its template, with where it comes from, as \`docs/labels.md\` says. */\nexport const english = {\n${names.map((room) => `...${nameOf(room)},`).join('\n')}\n} as const;\n`;
}

function nameOf(room: string): string {
  return room.replace(/-(\p{L})/gu, (_, letter: string) => letter.toUpperCase());
}
