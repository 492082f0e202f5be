import { BLOCKS_SPACE } from '../../../drawing';
import { blocksOnTheWay, type Gap, legCurves, legOnTheWay, spreadOnTheWay } from '../../../leg';
import { type Curve, outlineCurves, outlineEdge, pathReverse } from '../../../plane';
import { mm, type Phrase, printPhrase, say } from '../../../words';
import { useBench } from '../../store/bench';
import type { DrawingProps } from '../drawings/drawing-props';
import { Line } from '../drawings/Line';
import { Grainline } from '../drawings/Marks';
import { bridgedText, pathText } from '../path-text';
import { useTable } from '../table-state';
import { Word } from '../Word';

/** The blocks on their way to a leg: apart, sliding together, spread, straightened, shaped and cut to length. */
export default function JoinDrawing({ draft }: DrawingProps) {
  const way = useTable((state) => state.join) ?? 0;
  const { blocks, joined, legChoices } = draft;
  const { front, back, gaps } =
    way <= 1
      ? blocksOnTheWay(blocks, BLOCKS_SPACE, way)
      : spreadOnTheWay(joined, legChoices.spread, Math.min(1, way - 1));
  const side = (block: typeof front) => outlineEdge(block.edges, 'side').curves;
  return (
    <>
      <path className="join-gap" d={bridgedText([...side(front), ...pathReverse(side(back))])} />
      {[back, front].map((block) => (
        <g key={block.part}>
          <path className={`block-${block.part}`} d={pathText(outlineCurves(block.edges), true)} />
          <Line stroke={way > 2 ? 'block' : 'joined'} curves={outlineCurves(block.edges)} closed />
          <Grainline ends={block.grainline} />
          <Word
            at={{ x: block.grainline[0].x, y: (5 * block.crotchLevel + block.kneeLevel) / 6 }}
            anchor={block.part === 'front' ? 'start' : 'end'}
            dx={block.part === 'front' ? 8 : -8}
            className="word-part"
          >
            {block.part}
          </Word>
        </g>
      ))}
      {gaps.map((gap) => (
        <GapMark key={gap.name} gap={gap} />
      ))}
      {way > 2 && <Growing draft={draft} way={way - 2} />}
    </>
  );
}

/** The leg as it grows out of the blocks. */
function Growing({ draft: { joined, legChoices }, way }: DrawingProps & { readonly way: number }) {
  const { leg, shaped } = legOnTheWay(joined, legChoices, way);
  const before: readonly Curve[] = shaped > 0 && shaped < 1 ? legCurves(legOnTheWay(joined, legChoices, 1).leg) : [];
  return (
    <>
      {before.length > 0 && (
        <g opacity={1 - shaped}>
          <Line stroke="joined" curves={before} closed />
        </g>
      )}
      <g opacity={before.length > 0 ? shaped : 1}>
        <Line stroke="joined" curves={legCurves(leg)} closed />
      </g>
    </>
  );
}

/** A gap between the side lines, measured. */
function GapMark({ gap }: { readonly gap: Gap }) {
  const units = useBench((state) => state.project.units);
  const y = (gap.from.y + gap.to.y) / 2;
  const touching = Math.abs(gap.width) < TOUCHING;
  // At the waist and the hem the words stand clear of the outline.
  const dy = gap.name === 'waist' ? -10 : gap.name === 'hem' ? 20 : -6;
  return (
    <>
      <line className="join-measure" x1={gap.from.x} y1={gap.from.y} x2={gap.to.x} y2={gap.to.y} />
      <Word at={{ x: (gap.from.x + gap.to.x) / 2, y }} dy={dy} className="word-number">
        {printPhrase(
          touching ? say`${GAP_NAMES[gap.name]}: touching` : say`${GAP_NAMES[gap.name]} ${mm(gap.width)}`,
          units,
        )}
      </Word>
    </>
  );
}

const GAP_NAMES: Readonly<Record<Gap['name'], Phrase>> = {
  waist: say`waist`,
  hip: say`hip`,
  knee: say`knee`,
  hem: say`hem`,
};

/** Side lines nearer than this touch, millimetres. */
const TOUCHING = 0.05;
