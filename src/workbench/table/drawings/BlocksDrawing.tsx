import { useId } from 'react';
import type { Block } from '../../../block';
import { apart } from '../../../drawing';
import { levelName } from '../../../edges';
import { curvesBounds, outlineCurves, outlineEdge, type Point, pathEnd, pathStart, straight } from '../../../plane';
import { mm, printPhrase, said, say, words } from '../../../words';
import { useAsBrought } from '../../chalk/as-brought';
import { useChalk } from '../../chalk/chalk';
import { useBench } from '../../store/bench';
import { blockTape } from '../block-tape';
import { ChalkLineShape } from '../ChalkLines';
import { pathText } from '../path-text';
import { Word } from '../Word';
import type { DrawingProps } from './drawing-props';
import { Line } from './Line';
import { Grainline } from './Marks';

const LEVELS = ['hip', 'crotchLine', 'knee'] as const;

/** The two fitted blocks, net, side by side with a space between. */
export default function BlocksDrawing({ draft }: DrawingProps) {
  const units = useBench((state) => state.project.units);
  const field = useBench((state) => state.field);
  const tape = field === undefined ? undefined : blockTape(draft, field);
  const { front, back, backCrotchDrop } = draft.blocks;
  const backPoint = pathEnd(outlineEdge(back.edges, 'crotch').curves);
  return (
    <>
      <BlockShape block={back} />
      <BlockShape block={front} />
      {tape && (
        <g style={{ transform: `translateX(${apart(tape.part)}px)` }}>
          <path className="tape tape-lit" d={pathText(tape.curves)} />
        </g>
      )}
      <g style={{ transform: `translateX(${apart('back')}px)` }}>
        <Word at={backPoint} anchor="end" dx={-10} dy={18} className="word-note">
          {printPhrase(say`${mm(backCrotchDrop)} below the front’s`, units)}
        </Word>
      </g>
      <AsBrought />
    </>
  );
}

/** Somebody's own blocks before anything was taken off or trued, named below the chalk lines that are kept. */
function AsBrought() {
  const draft = useAsBrought();
  const row = useChalk((state) => state.lines.filter(({ shown }) => shown).length);
  return draft && <ChalkLineShape name={words`as they were brought`} draft={draft} station="blocks" row={row} />;
}

function BlockShape({ block }: { readonly block: Block }) {
  const id = useId();
  const { part, edges, grainline, darts, hipLevel, crotchLevel, kneeLevel } = block;
  const outline = pathText(outlineCurves(edges), true);
  const wide = pathStart(outlineEdge(edges, 'inseam').curves).x;
  const levels = { hip: hipLevel, crotchLine: crotchLevel, knee: kneeLevel };
  return (
    <g style={{ transform: `translateX(${apart(part)}px)` }}>
      <clipPath id={id}>
        <path d={outline} />
      </clipPath>
      <path data-block={part} className={part === 'front' ? 'tint-front' : 'tint-back'} d={outline} />
      <g clipPath={`url(#${id})`}>
        {Object.values(levels).map((y) => (
          <Line key={y} stroke="level" curves={[straight({ x: -Math.abs(wide), y }, { x: Math.abs(wide), y })]} />
        ))}
      </g>
      {darts.map((dart) => (
        <Line
          key={dart.tip.x}
          stroke="block"
          curves={[straight(dart.left, dart.tip), straight(dart.tip, dart.right)]}
        />
      ))}
      <Line stroke="joined" curves={outlineCurves(edges)} closed />
      <Grainline ends={grainline} />
      {/* Above it: within, in larger letters, there is no room beside the grainline. */}
      <Word at={waistMiddle(edges)} dy={-12} className="word-part">
        {part === 'front' ? words`front` : words`back`}
      </Word>
      {part === 'front' &&
        LEVELS.map((name) => (
          <Word key={name} at={{ x: wide, y: levels[name] }} anchor="start" dx={12} dy={4} className="word-note">
            {said(levelName(name))}
          </Word>
        ))}
    </g>
  );
}

/** Above the middle of the waist edge, as high as its higher end. */
function waistMiddle(edges: Block['edges']): Point {
  const { left, right, top } = curvesBounds(outlineEdge(edges, 'waist').curves);
  return { x: (left + right) / 2, y: top };
}
