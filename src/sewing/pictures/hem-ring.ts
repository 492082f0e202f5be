import { KIND_NAMES } from '../../edges';
import type { Mm } from '../../length';
import { say } from '../../words';
import { lengthOf, sewingFacts } from '../facts';
import { type Garment, pieceOfKind } from '../garment';
import { gatheredTo } from '../gathers';
import type { Draw } from './draw';
import type { PictureItem } from './picture';

/** What is left of a hem's width where it is gathered to a cuff. */
export const gatheredShare = (g: Garment): number =>
  (gatheredTo(g, 'hem') ?? sewingFacts(g).hemRound) / sewingFacts(g).hemRound;

/** A ring on the leg, raw edges together at the lower edge, its fold above. */
export function ringItems(g: Garment, d: Draw, [left, right]: readonly [Mm, Mm], level: Mm): readonly PictureItem[] {
  const u = d.unit;
  const rib = g.hem.finish === 'ribCuff';
  const kind = rib ? 'cuff' : 'hemBand';
  const name = KIND_NAMES[kind];
  const middle = (left + right) / 2;
  const top = level - g.hem.bandHeight;
  const ring = [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: level },
    { x: left, y: level },
  ];
  const stretched = rib && lengthOf(pieceOfKind(g, kind), ['upper']) < 2 * (right - left) - 6;
  const at = level - 0.4 * g.hem.bandHeight;
  return [
    ...d.cloth('right', ring),
    d.line('fold', { x: left, y: top }, { x: right, y: top }),
    d.line('stitch', { x: middle, y: top }, { x: middle, y: level }),
    d.line('lit', { x: left, y: level - 2 }, { x: right, y: level - 2 }),
    ...[left, middle, right].flatMap((x) => d.pin({ x, y: level - 2 }, { x: 1, y: 0 })),
    ...(stretched
      ? [
          ...d.arrow({ x: left, y: at }, { x: left - 8 * u, y: at }),
          ...d.arrow({ x: right, y: at }, { x: right + 8 * u, y: at }),
        ]
      : []),
    d.word({ x: left + 2 * u, y: top + 4.5 * u }, stretched ? say`${name}, stretched` : name),
    ...d.note({ x: right + 3 * u, y: top - 5 * u }, say`fold`, { x: right - 3 * u, y: top }),
    d.word({ x: middle, y: level + 4.5 * u }, say`raw edges together`, 'middle'),
  ];
}

/** Two rows of long stitches at the lower edge, their threads hanging out at the inseam. */
export function gatherItems(d: Draw, [left, right]: readonly [Mm, Mm], level: Mm): readonly PictureItem[] {
  const u = d.unit;
  const middle = (left + right) / 2;
  const rows = [1.6, 3.4].map((by) => level - by * u);
  const folds = [0.1, 0.2, 0.3, 0.4, 0.6, 0.7, 0.8, 0.9].map((share) => left + share * (right - left));
  return [
    ...folds.map((x) => d.line('gather', { x, y: level - 11 * u }, { x, y: level - 5.5 * u })),
    ...rows.map((y) => d.line('lit', { x: left, y }, { x: right, y })),
    ...rows.flatMap((y, i) =>
      [1, -1].map((side) => d.line('thin', { x: middle, y }, { x: middle + side * (3 + i) * u, y: level + 4 * u })),
    ),
    d.word({ x: middle + 6 * u, y: level + 4 * u }, say`threads to draw up`),
  ];
}
