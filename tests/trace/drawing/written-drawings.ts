import { writeBlocksSvg } from '../../../src/files/svg/blocks';
import { type Curve, curvePoint, distance, type Point, point, straight } from '../../../src/plane';
import { draft, exampleProject } from '../../../src/project';

const own = draft(exampleProject);
if (!own.ok) throw new Error('refused');
const { blocks } = own.value;

/** The drawing of the blocks without any name of a line. */
export const NAMELESS = writeBlocksSvg(own.value).replace(/ id="[^"]*"/g, '');

/** The lines of both blocks beside each other: closed outlines, and grainlines with arrowheads. */
const LINES: readonly Curve[] = (['front', 'back'] as const).flatMap((part) => {
  const { edges, grainline } = blocks[part];
  const [top, bottom] = grainline;
  const heads = [
    [top, 15],
    [bottom, -15],
  ] as const;
  return [
    ...edges.flatMap(({ curves }) => curves),
    straight(top, bottom),
    ...heads.flatMap(([p, dy]) => [-6, 6].map((dx) => straight(p, point(p.x + dx, p.y + dy)))),
  ];
});

/** Lines of two points, each about so long, millimetres. */
export const explodedLines = (step: number): readonly (readonly [Point, Point])[] =>
  LINES.flatMap((curve) => {
    const count = Math.max(1, Math.round(distance(curve[0], curve[3]) / step));
    return Array.from(
      { length: count },
      (_, i) => [curvePoint(curve, i / count), curvePoint(curve, (i + 1) / count)] as const,
    );
  });

const pairs = (...codes: readonly (string | number)[]) => codes.join('\n');

/** A DXF drawing of lines of two points, in no order. */
export function dxfOfLines(
  lines: readonly (readonly [Point, Point])[],
  units: number,
  size: number,
  more = '',
): string {
  const texts = lines.map(([a, b], i) => {
    const [from, to] = i % 3 === 0 ? [b, a] : [a, b];
    return pairs(0, 'LINE', 8, 'A', 10, from.x / size, 20, -from.y / size, 11, to.x / size, 21, -to.y / size);
  });
  // Every seventh line first, then those after them: a program that sorts them otherwise.
  const mixed = Array.from({ length: 7 }, (_, k) => texts.filter((__, i) => i % 7 === k)).flat();
  return pairs(
    0,
    'SECTION',
    2,
    'HEADER',
    9,
    '$INSUNITS',
    70,
    units,
    0,
    'ENDSEC',
    0,
    'SECTION',
    2,
    'ENTITIES',
    ...mixed,
    ...(more ? [more] : []),
    0,
    'ENDSEC',
    0,
    'EOF\n',
  );
}

/** Forty pieces of a garment that are no blocks: closed, each with a grainline and a hole in it. */
export const FORTY_PIECES: string = Array.from({ length: 40 }, (_, i) => {
  const [x, y] = [600 + (i % 10) * 320, 100 + Math.floor(i / 10) * 420];
  const [w, h] = [70 + ((i * 37) % 200), 90 + ((i * 53) % 300)];
  const corners = [10, x, 20, y, 42, 0, 10, x + w, 20, y, 42, 0.3, 10, x + w, 20, y + h, 42, -0.2, 10, x, 20, y + h];
  return pairs(
    ...[0, 'LWPOLYLINE', 8, 'B', 90, 4, 70, 1, ...corners],
    ...[0, 'LINE', 8, 'B', 10, x + w / 2, 20, y + h / 4, 11, x + w / 2, 21, y + h / 2],
    ...[0, 'CIRCLE', 8, 'B', 10, x + w / 2, 20, y + h / 2, 40, 5],
  );
}).join('\n');
