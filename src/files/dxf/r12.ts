import { type Point, point } from '../../plane';
import type { Draft } from '../../project';
import { layerNumber } from '../content/layers';
import { DXF_LAYERS, type DxfLine, type DxfWord, dxfPieces } from './drawing';

/** One value of the file, after the number that says what it is. */
type Tag = readonly [code: number, value: string | number];

/**
 * The pieces as DXF R12 in millimetres, for machines that read nothing newer: plain closed polylines without blocks, on
 * the layers of {@link DXF_LAYERS}. R12 knows no unit: whoever opens it must know that they are millimetres.
 *
 * @param draft the finished draft; always full size
 * @source the published DXF reference's group codes for HEADER, TABLES, POLYLINE, VERTEX, SEQEND, POINT and TEXT, from memory;
 *   read back and audited by an outside reader in the tests
 */
export function writeDxfR12(draft: Draft): string {
  const pieces = dxfPieces(draft);
  const entities = pieces.flatMap(({ at, lines, notches, words }) => [
    ...lines.flatMap((line) => polyline(line, at)),
    ...notches.flatMap((notch) => pointEntity(notch, at)),
    ...words.flatMap((word) => textEntity(word, at)),
  ]);
  const corners = pieces.flatMap(({ at, lines }) => lines.flatMap(({ points }) => points.map((p) => moved(p, at))));
  const tags: readonly Tag[] = [
    ...section('HEADER', [
      [9, '$ACADVER'],
      [1, 'AC1009'],
      [9, '$EXTMIN'],
      ...place(point(Math.min(...corners.map(({ x }) => x)), Math.min(...corners.map(({ y }) => y)))),
      [9, '$EXTMAX'],
      ...place(point(Math.max(...corners.map(({ x }) => x)), Math.max(...corners.map(({ y }) => y)))),
    ]),
    ...section('TABLES', [...LINE_TYPES, ...layerTable()]),
    ...section('ENTITIES', entities),
    [0, 'EOF'],
  ];
  return tags.map(([code, value]) => `${String(code).padStart(3)}\r\n${value}\r\n`).join('');
}

const section = (name: string, content: readonly Tag[]): readonly Tag[] => [
  [0, 'SECTION'],
  [2, name],
  ...content,
  [0, 'ENDSEC'],
];

const LINE_TYPES: readonly Tag[] = [
  [0, 'TABLE'],
  [2, 'LTYPE'],
  [70, 1],
  [0, 'LTYPE'],
  [2, 'CONTINUOUS'],
  [70, 0],
  [3, 'Solid line'],
  [72, 65],
  [73, 0],
  [40, figure(0)],
  [0, 'ENDTAB'],
];

function layerTable(): readonly Tag[] {
  const layers = DXF_LAYERS.flatMap(({ number, colour }): readonly Tag[] => [
    [0, 'LAYER'],
    [2, number],
    [70, 0],
    [62, colour],
    [6, 'CONTINUOUS'],
  ]);
  return [[0, 'TABLE'], [2, 'LAYER'], [70, DXF_LAYERS.length], ...layers, [0, 'ENDTAB']];
}

/** A line of more than one stretch, or a closed one, is a polyline; its first point stands for its height alone. */
function polyline({ layer, points, closed }: DxfLine, at: Point): readonly Tag[] {
  const vertices = points.flatMap((p): readonly Tag[] => [[0, 'VERTEX'], [8, layer], ...place(moved(p, at))]);
  return [
    [0, 'POLYLINE'],
    [8, layer],
    [66, 1],
    ...place(point(0, 0)),
    [70, closed ? 1 : 0],
    ...vertices,
    [0, 'SEQEND'],
    [8, layer],
  ];
}

const pointEntity = (p: Point, at: Point): readonly Tag[] => [
  [0, 'POINT'],
  [8, layerNumber('notches')],
  ...place(moved(p, at)),
];

function textEntity({ text, at: own, height, turn }: DxfWord, at: Point): readonly Tag[] {
  const there = moved(own, at);
  return [
    [0, 'TEXT'],
    [8, layerNumber('text')],
    ...place(there),
    [40, figure(height)],
    [1, plainText(text)],
    [50, figure(turn)],
    [72, 1],
    ...place(there, 1),
  ];
}

/** x, y and z; `second` for an entity's second point. */
const place = ({ x, y }: Point, second = 0): readonly Tag[] => [
  [10 + second, figure(x)],
  [20 + second, figure(y)],
  [30 + second, figure(0)],
];

const moved = (p: Point, by: Point): Point => point(p.x + by.x, p.y + by.y);

/** Always with a point, as old readers want their numbers. */
function figure(value: number): string {
  const text = value.toFixed(4).replace(/0+$/, '');
  return text.endsWith('.') ? `${text}0` : text;
}

const SIGNS: Readonly<Record<string, string>> = {
  '×': 'x',
  '–': '-',
  '—': '-',
  '·': '-',
  '‘': "'",
  '’': "'",
  '“': '"',
  '”': '"',
  '⁄': '/',
  ß: 'ss',
};

/** R12 knows plain letters only: fractions are written out, accents left off, what remains is a question mark. */
function plainText(text: string): string {
  return text
    .replace(
      /(\d)?([¼½¾⅛⅜⅝⅞⅓⅔])/g,
      (_, whole: string | undefined, part: string) => `${whole ? `${whole} ` : ''}${part}`,
    )
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[^\x20-\x7e]/g, (sign) => SIGNS[sign] ?? (/\s/.test(sign) ? ' ' : '?'));
}
