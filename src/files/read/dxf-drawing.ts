import { compose, type Matrix, rotateDEG, scale, translate } from 'transformation-matrix';
import { plainWords } from '../../length';
import { type Curve, curveMap, type Point } from '../../plane';
import type { Drawing, DrawnRun, DrawnWords } from '../../trace';
import { number, say } from '../../words';
import {
  behind,
  type DxfRuns,
  isDrawn,
  noteAt,
  noteOf,
  polyline,
  runsOfThing,
  type Vertex,
  vertexOf,
} from './dxf-curves';
import { type DxfThing, dxfThings, figure, word } from './dxf-pairs';
import { MOST_CURVES, refuseDrawing } from './place';

/** Millimetres in a unit of the header’s $INSUNITS. @source the published DXF reference */
const UNITS: Readonly<Record<number, number>> = {
  1: 25.4,
  2: 304.8,
  4: 1,
  5: 10,
  6: 1000,
  8: 2.54e-5,
  9: 0.0254,
  10: 914.4,
  13: 0.001,
  14: 100,
};
/** Blocks are inserted in blocks no deeper in any drawing. */
const DEEPEST = 16;
/** All that is inserted together. */
const MOST_INSERTED = 20_000;
const LONGEST_NAME = 100;

/** A line or a note as it stands in the file: a polyline of the old kind with the vertices that follow it. */
interface Entity {
  readonly thing: DxfThing;
  readonly vertices: Vertex[];
}

interface Block {
  readonly base: Point;
  readonly entities: Entity[];
}

/**
 * The lines and words of a DXF drawing: lines, circles, arcs, ellipses, polylines with bulges, splines, and blocks
 * inserted in it and in each other. What is on a layer that is off or frozen is not there.
 *
 * @param text of the file
 * @throws Refusal where it is no DXF, or more than any drawing of blocks
 * @source the published DXF reference
 */
export function dxfDrawing(text: string): Drawing {
  const { unit, hidden, blocks, entities } = partsOf(text);
  const runs: DrawnRun[] = [];
  const words: DrawnWords[] = [];
  let [unread, curves, inserted] = [0, 0, 0];
  const draw = (list: readonly Entity[], place: Matrix, names: readonly string[], depth: number): void => {
    const at = ({ x, y }: Point): Point => ({
      x: place.a * x + place.c * y + place.e,
      y: place.b * x + place.d * y + place.f,
    });
    for (const entity of list) {
      const { thing } = entity;
      const layer = word(thing, 8).slice(0, LONGEST_NAME);
      if (hidden.has(layer) || figure(thing, 60, 0) === 1) continue;
      const own = layer === '' || layer === '0' ? names : [layer, ...names];
      if (thing.kind === 'INSERT') {
        const block = blocks.get(word(thing, 2));
        if (!block) continue;
        if (depth === DEEPEST)
          refuseDrawing(
            undefined,
            say`has parts inserted in each other more than ${number(DEEPEST, 0)} deep; no drawing of blocks has.`,
          );
        const places = insertedAt(thing, block.base);
        if (!places) unread += 1;
        for (const one of places ?? []) {
          inserted += 1;
          if (inserted > MOST_INSERTED)
            refuseDrawing(
              undefined,
              say`inserts more than ${number(MOST_INSERTED, 0)} parts, far more than a drawing of blocks.`,
            );
          draw(block.entities, compose(place, one), [word(thing, 2).slice(0, LONGEST_NAME), ...own], depth + 1);
        }
      } else if (thing.kind === 'TEXT' || thing.kind === 'MTEXT')
        words.push({ text: plainWords(noteOf(thing)).slice(0, LONGEST_NAME), at: at(noteAt(thing)) });
      else {
        const drawn = runsOfEntity(entity);
        const good = drawn?.flat(2).every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y));
        if (!drawn || !good) unread += 1;
        else
          for (const run of drawn) {
            curves += run.length;
            if (curves > MOST_CURVES)
              refuseDrawing(
                undefined,
                say`has more than ${number(MOST_CURVES, 0)} curves, far more than a drawing of blocks.`,
              );
            runs.push({ names: own, curves: run.map((curve: Curve) => curveMap(curve, at)) });
          }
      }
    }
  };
  // On paper y runs down.
  draw(entities, scale(1, -1), [], 0);
  return { runs, words, unit, unread };
}

const runsOfEntity = ({ thing, vertices }: Entity): DxfRuns => {
  if (thing.kind !== 'POLYLINE') return runsOfThing(thing);
  return polyline(vertices, (figure(thing, 70, 0) & 1) === 1, thing);
};

/** What stands in the sections of a file. */
function partsOf(text: string) {
  const blocks = new Map<string, Block>();
  const entities: Entity[] = [];
  const hidden = new Set<string>();
  let unit: number | undefined;
  let [section, block, line]: [string, Block | undefined, Entity | undefined] = ['', undefined, undefined];
  for (const thing of dxfThings(text)) {
    const { kind } = thing;
    if (kind === 'SECTION') {
      section = word(thing, 2);
      if (section === 'HEADER') unit = unitOf(thing);
    } else if (kind === 'ENDSEC' || kind === 'SEQEND') line = undefined;
    else if (kind === 'LAYER' && section === 'TABLES') {
      if (figure(thing, 62, 7) < 0 || (figure(thing, 70, 0) & 1) === 1)
        hidden.add(word(thing, 2).slice(0, LONGEST_NAME));
    } else if (kind === 'BLOCK') {
      block = { base: noteAt(thing), entities: [] };
      blocks.set(word(thing, 2), block);
    } else if (kind === 'ENDBLK') block = undefined;
    else if (kind === 'VERTEX') {
      const vertex = vertexOf(thing);
      if (vertex) line?.vertices.push(vertex);
    } else if (section === 'ENTITIES' || (section === 'BLOCKS' && block)) {
      // Meshes are polylines of the old kind, too; they draw no line.
      const mesh = kind === 'POLYLINE' && (figure(thing, 70, 0) & (16 | 64)) !== 0;
      const wanted = isDrawn(kind) || ['POLYLINE', 'INSERT', 'TEXT', 'MTEXT'].includes(kind);
      line = wanted && !mesh ? { thing, vertices: [] } : undefined;
      // What lies on the sheet round the drawing is no part of it.
      if (line && figure(thing, 67, 0) !== 1) (block?.entities ?? entities).push(line);
    }
  }
  if (section === '') refuseDrawing(undefined, say`is no DXF drawing that can be read: it has no section.`);
  return { unit, hidden, blocks, entities };
}

/** How many millimetres the header says that a unit is. */
function unitOf({ pairs }: DxfThing): number | undefined {
  const at = pairs.findIndex(([code, value]) => code === 9 && value === '$INSUNITS');
  return UNITS[Number(at < 0 ? 0 : pairs[at + 1]?.[1])];
}

/** Where a block is inserted: once, or in rows and columns; undefined where it is tilted or has no figures. */
function insertedAt(thing: DxfThing, base: Point): readonly Matrix[] | undefined {
  const flip = behind(thing);
  const [x, y] = [figure(thing, 41, 1), figure(thing, 42, 1)];
  const [columns, rows] = [figure(thing, 70, 1), figure(thing, 71, 1)];
  const [dx, dy] = [figure(thing, 44, 0), figure(thing, 45, 0)];
  const { x: left, y: up } = noteAt(thing);
  const turn = figure(thing, 50, 0);
  if (flip === undefined || ![x, y, columns, rows, dx, dy, left, up, turn].every(Number.isFinite)) return undefined;
  if (columns * rows > MOST_INSERTED)
    refuseDrawing(
      undefined,
      say`inserts more than ${number(MOST_INSERTED, 0)} parts, far more than a drawing of blocks.`,
    );
  const placed = compose(flip ? scale(-1, 1) : translate(0, 0), translate(left, up), rotateDEG(turn));
  const own = compose(scale(x, y), translate(-base.x, -base.y));
  return Array.from({ length: Math.max(1, rows) }, (_, row) =>
    Array.from({ length: Math.max(1, columns) }, (__, column) =>
      compose(placed, translate(column * dx, row * dy), own),
    ),
  ).flat();
}
