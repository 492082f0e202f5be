import { useId } from 'react';
import type { Units } from '../../../length';
import type { Point } from '../../../plane';
import type { PictureItem, StepPicture } from '../../../sewing';
import { printPhrase } from '../../../words';
import { useBench } from '../../store/bench';
import { pictureShown } from '../../working/sewing-run';
import { useSewingShown } from '../../working/sewing-shown';
import { polygonText } from '../path-text';
import type { DrawingProps } from './drawing-props';

/** The picture of the sewing step that is shown, to the scale of the pattern. */
export function SewingDrawing({ draft }: DrawingProps) {
  const shown = useSewingShown((state) => state.shown);
  return <StepDrawing picture={pictureShown(draft, shown)} />;
}

/** The picture of any step. */
export function StepDrawing({ picture: { panels } }: { readonly picture: StepPicture }) {
  const id = useId();
  const units = useBench((state) => state.project.units);
  return panels.map(({ window: { left, top, right, bottom }, items }) => {
    const clip = `${id}${left} ${top}`;
    return (
      <g key={clip}>
        <clipPath id={clip}>
          <rect x={left} y={top} width={right - left} height={bottom - top} />
        </clipPath>
        <g clipPath={`url("#${clip}")`}>
          <Items items={items.filter(({ kind }) => kind !== 'word')} units={units} />
        </g>
        {/* In large letters a word may be longer than its picture is wide. */}
        <Items items={items.filter(({ kind }) => kind === 'word')} units={units} />
      </g>
    );
  });
}

const Items = ({ items, units }: { readonly items: readonly PictureItem[]; readonly units: Units }) =>
  items.map((item, i) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: what is drawn has no name, and its order is all it has
    <Item key={i} item={item} units={units} />
  ));

function Item({ item, units }: { readonly item: PictureItem; readonly units: Units }) {
  switch (item.kind) {
    case 'area':
      return (
        <>
          <path className={`face face-${item.face}`} d={polygonText(item.points)} />
          {item.hatch.length > 0 && (
            <path className={`face-hatch hatch-${item.face}`} d={item.hatch.map((stroke) => run(stroke)).join('')} />
          )}
        </>
      );
    case 'line':
      return <path className={`sewn sewn-${item.line}`} d={run(item.points)} />;
    case 'sign':
      return <path className="line-solid" d={polygonText(item.points)} />;
    case 'word':
      return (
        <text
          className="sewn-word"
          x={item.at.x}
          y={item.at.y}
          style={{ fontSize: legible(item.size) }}
          textAnchor={ANCHORS[item.align]}
        >
          {printPhrase(item.text, units)}
        </text>
      );
  }
}

/** A picture's words grow with it, but never beyond a heading's size, nor below what can be read, from the last row in show mode. */
const legible = (size: number): string =>
  `clamp(calc(max(10px, var(--show-type, 0px)) * var(--unzoomed)), ${size}px, calc(15px * var(--unzoomed)))`;

const ANCHORS = { left: 'start', middle: 'middle', right: 'end' } as const;
const n = (value: number): string => String(Math.round(value * 100) / 100);
const run = (points: readonly Point[]): string =>
  points.length === 0 ? '' : `M${points.map((p) => `${n(p.x)} ${n(p.y)}`).join('L')}`;
