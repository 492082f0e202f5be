import { SELVEDGE } from '../../../check';
import type { Layout } from '../../../cloth';
import { formatLength, type Mm } from '../../../length';
import { pathThrough, point } from '../../../plane';
import { mm, type Phrase, printPhrase, said, say, words } from '../../../words';
import { useBench } from '../../store/bench';
import { Word } from '../Word';
import type { LaySigns } from './LaySigns';
import { Line } from './Line';
import { NAP_SHARE } from './lay-box';
import { FoldTriangles, Grainline } from './Marks';

export interface LayGroundProps {
  readonly layout: Layout;
  readonly width: Mm;
  readonly length: Mm;
  readonly oneWay: boolean;
  readonly signs: LaySigns;
}

const SIDES: Readonly<Record<Layout, Phrase>> = {
  single: say`one layer, right side up`,
  foldedLengthwise: say`folded lengthwise, right sides together`,
  foldedCrosswise: say`folded crosswise, right sides together`,
};

/** The cloth under the pieces: its side, selvedges, fold, cut ends, nap, and its measures. */
export function LayGround({ layout, width, length, oneWay, signs }: LayGroundProps) {
  const units = useBench((state) => state.project.units);
  const lengthwise = layout === 'foldedLengthwise';
  const fold = lengthwise ? pathThrough(point(0, length), point(0, 0)) : pathThrough(point(0, 0), point(width, 0));
  const bought = useBench((state) => state.draft.project.cloth.width);
  const washed = (lengthwise ? 2 : 1) * width < bought - 0.5;
  const selvedges = lengthwise ? [width] : [0, width];
  return (
    <>
      <rect className="cloth-ground" width={width} height={length} />
      {layout !== 'single' && <rect width={width} height={length} fill={`url("#${signs.wrongSide}")`} />}
      {selvedges.map((x) => (
        <g key={x}>
          <rect className="selvedge" x={x === 0 ? 0 : x - SELVEDGE} width={SELVEDGE} height={length} />
          <Line stroke="cut" curves={pathThrough(point(x, 0), point(x, length))} />
          <Word at={{ x, y: length / 2 }} turn={-90} dy={x === 0 ? -9 : 18} className="word-lay-small">
            {lengthwise ? words`both selvedges` : words`selvedge`}
          </Word>
        </g>
      ))}
      <CutEnds layout={layout} width={width} length={length} />
      {layout !== 'single' && (
        <>
          <Line stroke="fold" curves={fold} />
          <FoldTriangles fold={fold} />
          <Word
            at={lengthwise ? { x: 0, y: length / 2 } : { x: width / 2, y: 0 }}
            turn={lengthwise ? -90 : 0}
            dy={-12}
            className="word-number"
          >
            {!lengthwise && oneWay ? words`fold: cut it open and turn the upper layer round` : words`fold`}
          </Word>
        </>
      )}
      {oneWay && <Nap width={width} length={length} />}
      <Word at={{ x: 0, y: 0 }} anchor="start" dy={-30} className="word-note">
        {said(SIDES[layout])}
      </Word>
      <Across
        width={width}
        says={printPhrase(washed ? say`${mm(width)} after the wash` : say`${mm(width)}`, units)}
        length={length}
      />
      <Along width={width} length={length} says={formatLength(length, units)} />
    </>
  );
}

/** Where the cloth was cut off: a thin dashed line, for more of it may lie there. */
function CutEnds({ layout, width, length }: Omit<LayGroundProps, 'oneWay' | 'signs'>) {
  const ends = layout === 'foldedCrosswise' ? [length] : [0, length];
  return ends.map((y) => <Line key={y} stroke="lengthen" curves={pathThrough(point(0, y), point(width, y))} />);
}

/** Which way the nap lies: an arrow beside the cloth. */
function Nap({ width, length }: { readonly width: Mm; readonly length: Mm }) {
  const x = width + NAP_SHARE * Math.max(width, length);
  return (
    <>
      <Grainline ends={[point(x, 0.1 * length), point(x, 0.3 * length)]} oneHead />
      <Word at={{ x, y: 0.32 * length }} dy={14} className="word-number">
        {words`nap`}
      </Word>
    </>
  );
}

/** From the cloth to its dimension lines, as a share of the cloth's longer side. */
const GAP_SHARE = 0.05;

/** How wide the cloth lies. */
function Across({ width, length, says }: { readonly width: Mm; readonly length: Mm; readonly says: string }) {
  const y = length + GAP_SHARE * Math.max(width, length);
  return (
    <>
      <Grainline ends={[point(0, y), point(width, y)]} />
      <Word at={{ x: width / 2, y }} dy={18} className="word-number">
        {says}
      </Word>
    </>
  );
}

/** How long it lies. */
function Along({ width, length, says }: { readonly width: Mm; readonly length: Mm; readonly says: string }) {
  const x = width + GAP_SHARE * Math.max(width, length);
  return (
    <>
      <Grainline ends={[point(x, 0), point(x, length)]} />
      <Word at={{ x, y: length / 2 }} turn={-90} dy={18} className="word-number">
        {says}
      </Word>
    </>
  );
}
