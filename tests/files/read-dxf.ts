import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import DxfParser, {
  type IEntity,
  type IInsertEntity,
  type ILwpolylineEntity,
  type IPointEntity,
  type IPolylineEntity,
  type ITextEntity,
} from 'dxf-parser';
import type { Point } from '../../src/plane';

/** A line of a cutting file as an outside reader found it; millimetres, y up. */
export interface ReadLine {
  readonly layer: string;
  readonly closed: boolean;
  readonly length: number;
  readonly area: number;
  readonly points: readonly (readonly [number, number])[];
}

/** What the outside reader found in one file. */
export interface ReadDxf {
  readonly version: string;
  readonly units: number;
  readonly faults: number;
  readonly lines: readonly ReadLine[];
  readonly points: readonly { layer: string; at: readonly [number, number] }[];
  readonly texts: readonly { layer: string; text: string; height: number; turn: number }[];
}

const flat = (points: readonly Point[], closed: boolean) => {
  const ends = closed ? [...points.slice(1), points[0] as Point] : points.slice(1);
  const pairs = ends.map((end, i) => [points[i] as Point, end] as const);
  return {
    length: pairs.reduce((sum, [a, b]) => sum + Math.hypot(b.x - a.x, b.y - a.y), 0),
    area: Math.abs(pairs.reduce((sum, [a, b]) => sum + a.x * b.y - b.x * a.y, 0)) / 2,
  };
};

/** What stands in the file by dxf-parser, blocks opened up: each thing, and by how much its block is moved. */
function parsedEntities(text: string): readonly (readonly [entity: IEntity, by: Point])[] {
  const parsed = new DxfParser().parseSync(text);
  if (!parsed) throw new Error('not a DXF file');
  return parsed.entities.flatMap((entity): readonly (readonly [entity: IEntity, by: Point])[] => {
    if (entity.type !== 'INSERT') return [[entity, { x: 0, y: 0 }]];
    const { name, position } = entity as IInsertEntity;
    return (parsed.blocks[name]?.entities ?? []).map((inner) => [inner, position] as const);
  });
}

/** The file's polylines by dxf-parser, blocks opened up. */
export const parsedLines = (text: string): readonly ReadLine[] =>
  parsedEntities(text).flatMap(([entity, by]) => {
    const line = entity as ILwpolylineEntity | IPolylineEntity;
    if (line.type !== 'LWPOLYLINE' && line.type !== 'POLYLINE') return [];
    const points = line.vertices.map(({ x, y }) => ({ x: x + by.x, y: y + by.y }));
    const closed = line.shape === true;
    return [{ layer: line.layer, closed, points: points.map(({ x, y }) => [x, y] as const), ...flat(points, closed) }];
  });

/** The file's points by dxf-parser, blocks opened up. */
export const parsedPoints = (text: string): ReadDxf['points'] =>
  parsedEntities(text).flatMap(([entity, by]) => {
    if (entity.type !== 'POINT') return [];
    const { x, y } = (entity as IPointEntity).position;
    return [{ layer: entity.layer, at: [x + by.x, y + by.y] as const }];
  });

/** The file's words by dxf-parser. */
export const parsedTexts = (text: string): readonly string[] =>
  parsedEntities(text).flatMap(([entity]) => (entity.type === 'TEXT' ? [(entity as ITextEntity).text] : []));

/** Debian's own Python first: another one on the path does not see Debian's modules. */
const python = ['/usr/bin/python3', 'python3'].find((name) => {
  try {
    execFileSync(name, ['-c', 'import ezdxf'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
});

/** Whether the outside reader is here; it says so where it is not. */
export function ezdxfIsHere(): boolean {
  if (python === undefined) {
    console.warn(
      'The cutting files were not read with ezdxf: it is not installed (Debian: python3-ezdxf). They were read with dxf-parser alone.',
    );
  }
  return python !== undefined;
}

/** Reads and audits cutting files with ezdxf, blocks opened up. */
export function readWithEzdxf(texts: readonly string[]): readonly ReadDxf[] {
  const folder = mkdtempSync(join(tmpdir(), 'dxf-'));
  try {
    const paths = texts.map((text, i) => {
      const path = join(folder, `${i}.dxf`);
      writeFileSync(path, text);
      return path;
    });
    const script = fileURLToPath(new URL('read_dxf.py', import.meta.url));
    const said = execFileSync(python ?? 'python3', [script, ...paths], { encoding: 'utf8', maxBuffer: 1 << 28 });
    return JSON.parse(said) as readonly ReadDxf[];
  } finally {
    rmSync(folder, { recursive: true });
  }
}
