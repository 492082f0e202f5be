import { formatLength } from '../../length';
import { curvesBounds } from '../../plane';
import { type DrawnSheet, outlineReach } from '../../trace';
import { number, own, words } from '../../words';
import { useBench } from '../store/bench';
import { pathText } from '../table/path-text';
import { pickOutline, useOutlines } from './outlines-store';

/** White round the drawing, as a share of its larger side. */
const BORDER = 0.03;

/** The whole drawing in small: each closed outline can be pressed. */
export function PickBoard({ sheet }: { readonly sheet: DrawnSheet }) {
  const work = useOutlines((state) => state.work);
  const units = useBench((state) => state.project.units);
  const { left, right, top, bottom } = curvesBounds(sheet.outlines.flatMap(({ curves }) => curves));
  const border = BORDER * Math.max(right - left, bottom - top);
  const letters = Math.max(right - left, bottom - top) * 0.035;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing is no set of fields
    <svg
      className="outlines-board"
      viewBox={`${left - border} ${top - border} ${right - left + 2 * border} ${bottom - top + 2 * border}`}
      role="group"
      aria-label={words`The outlines of the drawing`}
    >
      {sheet.outlines.map((outline, i) => {
        const part = work.front?.outline === i ? 'front' : work.back?.outline === i ? 'back' : undefined;
        const name = part === 'front' ? words`front` : part === 'back' ? words`back` : '';
        const box = curvesBounds(outline.curves);
        const reach = formatLength(outlineReach(outline) * work.unit, units);
        const key = `${i}`;
        return (
          // biome-ignore lint/a11y/useSemanticElements: a button can't be drawn as an outline
          <g
            key={key}
            role="button"
            tabIndex={0}
            aria-pressed={part !== undefined}
            aria-label={
              part
                ? words`Outline ${number(i + 1, 0)}, ${own(reach)} long: ${own(name)}`
                : words`Outline ${number(i + 1, 0)}, ${own(reach)} long`
            }
            data-part={part}
            className="outlines-piece"
            onClick={() => pickOutline(i)}
            onKeyDown={(event) => {
              if (event.key !== 'Enter' && event.key !== ' ') return;
              event.preventDefault();
              pickOutline(i);
            }}
          >
            <path className="outlines-shape" d={pathText(outline.curves, true)} />
            {outline.lines.map(({ curves }, k) => (
              <path key={`${key} ${String(k)}`} className="outlines-inner" d={pathText(curves)} />
            ))}
            {part && (
              <text x={(box.left + box.right) / 2} y={(box.top + box.bottom) / 2} fontSize={letters}>
                {name}
              </text>
            )}
          </g>
        );
      })}
    </svg>
  );
}
