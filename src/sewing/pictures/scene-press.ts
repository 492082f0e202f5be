import { cutCurves, type EdgeName, isWorn, KIND_NAMES } from '../../edges';
import { between, type Edge, mapTuple, mirrored, type Point, pointsBounds } from '../../plane';
import { inTurn, mm, type Phrase, say } from '../../words';
import { type Garment, pieceOfKind } from '../garment';
import { hemTucked, turnedDepth } from '../hem-turning';
import { overlockedEdges, rawEdgeName } from '../steps-flat';
import { drawing, panelled } from './draw';
import { cutLeg, hemFold, hemStrip } from './leg-views';
import type { PicturePanel, StepPicture } from './picture';
import { polygon, polyline, shifted } from './polygon';

/** The raw edges that are overlocked, each in a window of its own. */
export function rawEdgesPicture(g: Garment): StepPicture {
  const works = overlockedEdges(g);
  const panels: PicturePanel[] = [];
  let y = 0;
  const shapes = works.map(({ piece, edges: [edge] }) => {
    const own = piece === 'leg' ? g.finished.sewn : pieceOfKind(g, piece);
    const run = polyline(own.cutLine.filter((one) => one.name === edge).flatMap((one) => one.curves));
    return { piece, edge, points: polygon(cutCurves(own)), run, box: pointsBounds(run) };
  });
  const width = Math.max(...shapes.map(({ box }) => box.right - box.left)) + 60;
  const d = drawing(1.1 * width);
  for (const { piece, edge, points, run, box } of shapes) {
    const above = edge === 'waist' || edge === 'upper';
    const depth = 0.28 * width;
    const move = shifted(30 - box.left, y + (above ? 5 * d.unit : depth - 5 * d.unit) - box.top);
    panels.push({
      window: { left: 0, right: width, top: y, bottom: y + depth + 4 * d.unit },
      items: [
        ...d.cloth('wrong', points.map(move)),
        d.zigzag('overlock', run.map(move), 2 * d.unit),
        d.word({ x: width / 2, y: y + (above ? 0.6 : 0.45) * depth }, KIND_NAMES[piece], 'middle'),
      ],
    });
    y += depth + 7 * d.unit;
  }
  return panelled(panels, say`The raw edges overlocked: ${inTurn(works.map(rawEdgeName), '; ')}.`);
}

/** Casing and hem pressed over on the flat leg, wrong side up. */
export function foldsPicture(g: Garment): StepPicture {
  const { sewn, casing, heights, hemPlan } = g.finished;
  const leg = cutLeg(g);
  const box = pointsBounds(leg);
  const d = drawing(1.15 * (box.right - box.left));
  const u = d.unit;
  const panels: PicturePanel[] = [];
  let y = 0;
  if (heights.kind === 'folded') {
    const isTurned = ({ name }: Edge<EdgeName>): boolean =>
      name === 'waist' || name === 'centreFrontTurning' || name === 'centreBackTurning';
    const areaOf = (edges: readonly Edge[]) => polygon(edges.flatMap(({ curves }) => curves));
    const strip = areaOf(sewn.cutLine.filter(isTurned)).map((p) => mirrored(p, ...casing.fold));
    const top = Math.min(casing.fold[0].y, casing.fold[1].y);
    const move = shifted(-box.left + 2 * u, y - top + 6 * u);
    const body = areaOf(sewn.cutLine.filter((edge) => !isTurned(edge)));
    panels.push({
      window: { left: 0, right: box.right - box.left + 4 * u, top: y, bottom: y + 34 * u },
      items: [
        ...d.cloth('wrong', body.map(move)),
        ...d.cloth('right', strip.map(move)),
        d.line('litFold', ...casing.fold.map(move)),
        d.word({ x: (box.right - box.left) / 2, y: y + 3.4 * u }, say`fold`, 'middle'),
        d.word({ x: (box.right - box.left) / 2, y: y + 30 * u }, say`waist, wrong side up`, 'middle'),
        ...d.arrow(
          move(between(casing.raw[0], casing.raw[1], 0.75)),
          move(mirrored(between(casing.raw[0], casing.raw[1], 0.75), ...casing.fold)),
        ),
      ],
    });
    y += 38 * u;
  }
  if (hemPlan.kind === 'folded') {
    const fold = hemFold(g);
    const bottom = Math.max(fold[0].y, fold[1].y);
    const move = shifted(-box.left + 2 * u, y - bottom + 24 * u);
    const strip = hemStrip(g);
    const body = sewn.cutLine.filter(({ name }) => isWorn(name));
    panels.push({
      window: { left: 0, right: box.right - box.left + 4 * u, top: y, bottom: y + 30 * u },
      items: [
        ...d.cloth('wrong', polygon(body.flatMap((edge) => edge.curves)).map(move)),
        ...d.cloth('right', strip.map(move)),
        d.line('litFold', ...fold.map(move)),
        ...(g.hem.turnUnder > 0 ? [d.line('litFold', ...tuckedFold(g).map(move))] : []),
        d.word(
          { x: (box.right - box.left) / 2, y: y + 28.5 * u },
          g.hem.turnUnder > 0 ? say`then this fold` : say`fold`,
          'middle',
        ),
        ...(g.hem.turnUnder > 0
          ? [
              d.word(
                { x: (box.right - box.left) / 2, y: move(tuckedFold(g)[0]).y - 1.6 * u },
                say`first fold, ${mm(hemTucked(g))} turned under`,
                'middle',
              ),
            ]
          : []),
        d.word({ x: (box.right - box.left) / 2, y: y + 6 * u }, say`hem, wrong side up`, 'middle'),
      ],
    });
  }
  return panelled(panels, pressedTold(heights.kind === 'folded', hemPlan.kind === 'folded'));
}

/** The hem's first fold as it lies on the leg, where its edge is turned under: over the stitching line, or close to it. */
const tuckedFold = (g: Garment): readonly [Point, Point] => {
  const fold = hemFold(g);
  const share = turnedDepth(g) / g.finished.hemPlan.depth;
  return mapTuple(fold, (p, i) => between(p, g.finished.hem.stitching[i as 0 | 1], share));
};

function pressedTold(casing: boolean, hem: boolean): Phrase {
  if (!casing) return say`The leg, wrong side up, with the hem pressed over in the fold.`;
  return hem
    ? say`The leg, wrong side up, with the casing and the hem pressed over in the fold.`
    : say`The leg, wrong side up, with the casing pressed over in the fold.`;
}
