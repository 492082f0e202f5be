import { deflateRawSync } from 'node:zlib';
import { writeBlocksSvg } from '../../src/files/svg/blocks';
import { draft, exampleProject, withLastPrint } from '../../src/project';
import { projectDrawn } from '../fuzz/projects';
import { type Chance, chanceOf } from '../fuzz/random';
import { damagedDrawing } from './drawing-texts';
import { damagedProject } from './project-texts';
import { damagedTable } from './table-texts';
import { damagedBytes, damagedText } from './texts';

/** A damaged file, as its bytes, and what it was. A link is the text of its address. */
export interface DamagedFile {
  readonly kind: 'project' | 'link' | 'drawing' | 'table';
  readonly bytes: Uint8Array;
}

const drafted = draft(exampleProject);
if (!drafted.ok) throw new Error('the example was refused');
const DRAWING = writeBlocksSvg(drafted.value);
const PRINTED = withLastPrint(drafted.value, new Date(2026, 10, 24));

/** Of ten files, so many are of a kind. */
const KINDS = [
  ...Array(5).fill('project'),
  'link',
  'drawing',
  'drawing',
  'table',
  'table',
] as const satisfies readonly string[];

/** The damaged file of a seed. */
export function damagedFile(seed: number): DamagedFile {
  const chance = chanceOf(seed);
  const kind = chance.oneOf(KINDS) as DamagedFile['kind'];
  if (kind === 'link') return { kind, bytes: Buffer.from(damagedLink(seed, chance)) };
  const text = sensibly(kind, seed, chance);
  return { kind, bytes: damagedBytes(chance.happens(0.4) ? damagedText(text, chance) : text, chance) };
}

function sensibly(kind: Exclude<DamagedFile['kind'], 'link'>, seed: number, chance: Chance): string {
  if (kind === 'drawing') return chance.happens(0.8) ? damagedDrawing(DRAWING, chance) : DRAWING;
  if (kind === 'table') return damagedTable(exampleProject.body, chance);
  const project = chance.happens(0.7) ? projectDrawn(seed) : chance.oneOf([exampleProject, PRINTED]);
  return chance.happens(0.85) ? damagedProject(project, chance) : JSON.stringify(project, null, 2);
}

function damagedLink(seed: number, chance: Chance): string {
  const text = damagedProject(projectDrawn(seed), chance);
  const packed = deflateRawSync(Buffer.from(text));
  const letters = Buffer.from(chance.happens(0.5) ? damagedBytes(packed.toString('latin1'), chance) : packed).toString(
    'base64url',
  );
  return `#project=${chance.happens(0.5) ? damagedText(letters, chance) : letters}`;
}
