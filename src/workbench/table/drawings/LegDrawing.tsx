import { useId } from 'react';
import { centreStands, type Leg, legCurves } from '../../../leg';
import { type Point, pathEnd, pathStart, straight } from '../../../plane';
import { mm, printPhrase, say, words } from '../../../words';
import { useBench } from '../../store/bench';
import { pathText } from '../path-text';
import { Word } from '../Word';
import type { DrawingProps } from './drawing-props';
import { Line } from './Line';

/** The blocks lying joined and spread under the leg that grows out of them; what it gains is hatched and measured. */
export default function LegDrawing({ draft }: DrawingProps) {
  const { leg } = draft;
  const id = useId();
  const outline = legCurves(leg);
  const { front, back } = leg;
  return (
    <>
      <pattern id={id} width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <rect className="gain-ground" width="9" height="9" />
        <path className="gain-hatch" d="M0 0V9" />
      </pattern>
      <path d={pathText(outline, true)} fill={`url(#${id})`} />
      <path className="block-back" d={pathText(leg.joined.back, true)} />
      <path className="block-front" d={pathText(leg.joined.front, true)} />
      <Line stroke="block" curves={leg.joined.back} closed />
      <Line stroke="block" curves={leg.joined.front} closed />
      <Line
        stroke="level"
        curves={[straight(at(back.crotchPoint.x, leg.hipLevel), at(front.crotchPoint.x, leg.hipLevel))]}
      />
      <Line stroke="level" curves={[straight(at(back.crotchPoint.x, leg.crotchLevel), front.crotchPoint)]} />
      <Line stroke="side" curves={[straight(at(0, sideTop(leg.waistEdge)), at(0, pathEnd(leg.hem).y))]} />
      <Line stroke="joined" curves={outline} closed />
      {draft.legs.length > 1 && <OtherLeg leg={draft.legs[0].leg} />}
      <LegWords draft={draft} />
    </>
  );
}

/** The left leg, turned over and laid on the right one. */
function OtherLeg({ leg }: { readonly leg: Leg }) {
  return (
    <>
      <Line stroke="fold" curves={legCurves(leg)} closed />
      <Word at={leg.back.waistPoint} anchor="end" dx={-10} dy={4} className="word-note">
        {words`dashed: the left leg`}
      </Word>
    </>
  );
}

const at = (x: number, y: number): Point => ({ x, y });

const sideTop = (waist: Parameters<typeof pathStart>[0]): number => (pathStart(waist).y + pathEnd(waist).y) / 2;

function LegWords({ draft }: DrawingProps) {
  const units = useBench((state) => state.project.units);
  const { leg, measures } = draft;
  const { front, back } = leg;
  // Above the gap at the knee, whose words are as long as the gap is wide.
  const mid = (2 * leg.crotchLevel + (leg.kneeLevel ?? pathStart(leg.hem).y)) / 3;
  return (
    <>
      <Word at={at(back.crotchPoint.x / 2, mid)} className="word-part">
        {words`back`}
      </Word>
      <Word at={at(front.crotchPoint.x / 2, mid)} className="word-part">
        {words`front`}
      </Word>
      <Word at={front.waistPoint} anchor="start" dx={12} dy={4} className="word-note word-aside">
        {printPhrase(centreStands('front', front), units)}
      </Word>
      <Word at={at(0, leg.hipLevel / 3)} className="word-note word-small">
        {printPhrase(say`gap ${mm(measures.gapAtWaist)} at the waist`, units)}
      </Word>
      {leg.kneeLevel !== undefined && (
        <Word at={at(0, leg.kneeLevel)} dy={4} className="word-note word-small">
          {printPhrase(say`gap ${mm(measures.gapAtKnee)} at the knee`, units)}
        </Word>
      )}
      <Word at={at(front.crotchPoint.x, leg.crotchLevel)} anchor="start" dx={10} dy={4} className="word-note">
        {words`crotch line`}
      </Word>
      <Word at={at(front.crotchPoint.x, leg.hipLevel)} anchor="start" dx={10} dy={4} className="word-note">
        {words`fullest hip`}
      </Word>
    </>
  );
}
