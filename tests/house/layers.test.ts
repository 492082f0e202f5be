import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { layerProblems } from '../../.house/layer-problems.mjs';
import { folders, neighbours, rooms } from '../../.house/rooms.cjs';

let house: string;

beforeEach(() => {
  house = mkdtempSync(join(tmpdir(), 'legwork-layers-'));
});

afterEach(() => {
  rmSync(house, { recursive: true });
});

test('each room may use every room above it and none below it', async () => {
  const allowed: string[] = [];
  const forbidden: string[] = [];
  rooms.forEach((room, at) => {
    put(`src/${room}/index.ts`, 'export const door = 1;');
    rooms.forEach((other, otherAt) => {
      if (other === room) return;
      const file = `src/${room}/uses-${other}.ts`;
      put(file, `export { door } from '../${other}';`);
      const apart = neighbours.includes(room) && neighbours.includes(other);
      (otherAt < at && !apart ? allowed : forbidden).push(
        `${room}-uses-only-rooms-above: ${file} → src/${other}/index.ts`,
      );
    });
  });
  expect(allowed).toHaveLength((rooms.length * (rooms.length - 1)) / 2 - 1);
  expect(await breaches()).toEqual(forbidden.sort());
});

test.each(Object.entries(folders))(
  'each folder of %s uses those above it, and nothing beside or below it',
  async (room, order) => {
    const forbidden: string[] = [];
    put(`src/${room}/index.ts`, 'export const door = 1;');
    order.forEach((folder, at) => {
      put(`src/${room}/${folder}/inside.ts`, 'export const inside = 1;');
      const breach = (file: string, to: string) =>
        forbidden.push(`${room}-${folder}-uses-only-folders-above: src/${room}/${folder}/${file} → src/${room}/${to}`);
      put(`src/${room}/${folder}/uses-door.ts`, "export { door } from '..';");
      breach('uses-door.ts', 'index.ts');
      order.forEach((other, otherAt) => {
        if (other === folder) return;
        put(`src/${room}/${folder}/uses-${other}.ts`, `export { inside } from '../${other}/inside';`);
        if (otherAt > at) breach(`uses-${other}.ts`, `${other}/inside.ts`);
      });
    });
    expect(await breaches()).toEqual(forbidden.sort());
  },
);

test('a folder that is not in the order of its room is told', async () => {
  const [room = ''] = Object.keys(folders);
  put(`src/${room}/cupboard/inside.ts`, 'export const inside = 1;');
  expect(await breaches()).toEqual([`no-folder: src/${room}/cupboard/inside.ts`]);
});

test('a type that is imported from below counts as much as a value', async () => {
  put('src/leg/index.ts', 'export interface Leg { readonly spread: number }');
  put('src/plane/index.ts', "import type { Leg } from '../leg';\nexport const spread = (leg: Leg) => leg.spread;");
  expect(await breaches()).toEqual(['plane-uses-only-rooms-above: src/plane/index.ts → src/leg/index.ts']);
});

test('a room is entered by its index only', async () => {
  put('src/plane/inside.ts', 'export const inside = 1;');
  put('src/leg/index.ts', "export { inside } from '../plane/inside';");
  expect(await breaches()).toEqual(['rooms-by-their-door: src/leg/index.ts → src/plane/inside.ts']);
});

test('a package stays in the room that keeps it', async () => {
  for (const name of ['jspdf', 'react']) {
    put(`node_modules/${name}/index.js`, 'export default 1;');
    put(`src/leg/${name}.ts`, `export { default } from '${name}';`);
  }
  put('package.json', '{ "dependencies": { "jspdf": "1", "react": "1" } }');
  put('src/files/index.ts', "export { default } from 'jspdf';");
  put('src/workbench/index.ts', "export { default } from 'react';");
  expect(await breaches()).toEqual([
    'jspdf-only-in-files: src/leg/jspdf.ts → node_modules/jspdf/index.js',
    'react-only-in-workbench: src/leg/react.ts → node_modules/react/index.js',
  ]);
});

test('only the command line may use Node itself', async () => {
  put('src/command/index.ts', "export { readFileSync } from 'node:fs';");
  put('src/files/index.ts', "export { readFileSync } from 'node:fs';");
  expect(await breaches()).toEqual(['node-only-in-command: src/files/index.ts → fs']);
});

test('files that import each other in a circle are refused', async () => {
  put('src/plane/there.ts', "import { back } from './back';\nexport const there = () => back;");
  put('src/plane/back.ts', "import { there } from './there';\nexport const back = () => there;");
  expect(await breaches()).toEqual(['no-circles: src/plane/back.ts → src/plane/there.ts']);
});

test('what is shipped uses neither tests nor tools, and nothing outside the rooms', async () => {
  put('tests/help.ts', 'export const help = 1;');
  put('src/plane/helped.ts', "export { help } from '../../tests/help';");
  put('src/cellar/index.ts', 'export const cellar = 1;');
  expect(await breaches()).toEqual([
    'no-room: src/cellar/index.ts',
    'src-stands-alone: src/plane/helped.ts → tests/help.ts',
  ]);
});

test('seeing no file at all is a failure, not a success', async () => {
  mkdirSync(join(house, 'src'));
  expect(await breaches()).toEqual(['not-looked-at: src holds no TypeScript file']);
});

function put(file: string, text: string): void {
  const path = join(house, file);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, `${text}\n`);
}

async function breaches(): Promise<readonly string[]> {
  return (await layerProblems(house)).problems;
}
