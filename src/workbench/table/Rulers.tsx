import { memo } from 'react';
import type { Units } from '../../length';
import { words } from '../../words';
import type { Size, View } from '../view/view';
import { type RulerMark, rulerMarks } from './ruler-marks';

/** The strips along the top and the left, pixels. */
export const RULER = 24;

export interface RulersProps {
  readonly view: View;
  readonly size: Size;
  readonly units: Units;
}

/** A figure of a number, pixels. */
const LETTER = 7;

/** The grid on the paper, under everything. */
export const Grid = memo(function Grid({ view, size, units }: RulersProps) {
  const across = rulerMarks(view, size, 'across', units).filter((mark) => mark.main);
  const down = rulerMarks(view, size, 'down', units).filter((mark) => mark.main);
  const text = [
    ...across.map((mark) => `M${half(mark.at)} 0V${size.height}`),
    ...down.map((mark) => `M0 ${half(mark.at)}H${size.width}`),
  ];
  return <path className="grid-lines" d={text.join('')} />;
});

/** Rulers along the top and the left, in the chosen unit, over everything. */
export const Rulers = memo(function Rulers({ view, size, units }: RulersProps) {
  const across = rulerMarks(view, size, 'across', units).filter((mark) => mark.at > RULER);
  const down = rulerMarks(view, size, 'down', units).filter((mark) => mark.at > RULER);
  return (
    <g className="rulers">
      <path className="ruler-strip" d={`M0 0H${size.width}V${RULER}H${RULER}V${size.height}H0Z`} />
      <path
        className="ruler-ticks"
        d={[
          ...across.map((mark) => `M${half(mark.at)} ${RULER}v${-tick(mark)}`),
          ...down.map((mark) => `M${RULER} ${half(mark.at)}h${-tick(mark)}`),
        ].join('')}
      />
      {across
        .filter((mark) => mark.text)
        .map((mark) => (
          <text key={mark.text} x={mark.at + 3} y={12}>
            {mark.text}
          </text>
        ))}
      {down
        // A number is written upwards from its mark: none that would be cut off by the corner.
        .filter((mark) => mark.text && mark.at > RULER + LETTER * (mark.text.length + 0.5))
        .map((mark) => (
          <text key={mark.text} transform={`translate(12 ${mark.at - 3}) rotate(-90)`}>
            {mark.text}
          </text>
        ))}
      <rect className="ruler-corner" width={RULER} height={RULER} />
      <text className="ruler-unit" x={RULER / 2} y={15.5}>
        {units === 'cm' ? words`cm` : words`in`}
      </text>
    </g>
  );
});

const tick = (mark: RulerMark): number => (mark.text !== '' || mark.main ? 9 : 4);

/** On the middle of a pixel, so that a hairline is one pixel wide. */
const half = (at: number): number => Math.round(at) + 0.5;
