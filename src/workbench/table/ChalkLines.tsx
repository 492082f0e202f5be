import { useMemo } from 'react';
import { apart, uprightPlaces } from '../../drawing';
import { cutCurves, isDrawnLeft, isLeg } from '../../edges';
import { legCurves } from '../../leg';
import { type Curve, curveMap, curvesBounds, outlineCurves } from '../../plane';
import type { Draft, Station } from '../../project';
import { words } from '../../words';
import { useChalk } from '../chalk/chalk';
import { useFirstCut } from '../chalk/first-cut';
import { useBench } from '../store/bench';
import { pathText } from './path-text';
import { Word } from './Word';

/** The outlines that were kept, dotted over the present drawing, each with its name. */
export function ChalkLines() {
  const station = useBench((state) => state.station);
  const lines = useChalk((state) => state.lines);
  const firstCut = useFirstCut();
  const shown = lines.filter((line) => line.shown);
  const all = [
    ...(station === 'check' && firstCut ? [{ id: 'first', name: words`before the corrections`, draft: firstCut }] : []),
    ...shown,
  ];
  return all.map(({ id, name, draft }, row) => (
    <ChalkLineShape key={id} name={name} draft={draft} station={station} row={row} />
  ));
}

interface ChalkLineShapeProps {
  readonly name: string;
  readonly draft: Draft;
  readonly station: Station;
  readonly row: number;
}

/** An outline as it is compared at a station, and its name, the row-th below it. */
export function ChalkLineShape({ name, draft, station, row }: ChalkLineShapeProps) {
  const outlines = useMemo(() => outlinesAt(station, draft), [station, draft]);
  if (outlines.length === 0) return null;
  const box = curvesBounds(outlines.flat());
  return (
    <>
      <path className="chalk-line" d={outlines.map((curves) => pathText(curves, true)).join('')} />
      <Word at={{ x: box.left, y: box.bottom }} anchor="start" dy={18 + 17 * row} className="word-chalk">
        {name}
      </Word>
    </>
  );
}

/** What of a draft is compared at a station; nothing where no outline of the leg is shown. */
function outlinesAt(station: Station, { blocks, leg, pieces }: Draft): readonly (readonly Curve[])[] {
  if (station === 'blocks') {
    return (['front', 'back'] as const).map((part) =>
      outlineCurves(blocks[part].edges).map((curve) => curveMap(curve, (p) => ({ x: p.x + apart(part), y: p.y }))),
    );
  }
  if (station === 'leg') return [legCurves(leg)];
  if (station !== 'edges' && station !== 'check') return [];
  const index = pieces.findIndex((piece) => isLeg(piece) && !isDrawnLeft(piece));
  const piece = pieces[index];
  const shift = uprightPlaces(pieces)[index]?.shift ?? { x: 0, y: 0 };
  if (!piece) return [];
  return [cutCurves(piece).map((curve) => curveMap(curve, (p) => ({ x: p.x + shift.x, y: p.y + shift.y })))];
}
