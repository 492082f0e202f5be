import { type MeasurementKey, measurements } from '../../../body';
import { formatLength } from '../../../length';
import { useBench } from '../../store/bench';
import { Word } from '../Word';
import type { DrawingProps } from './drawing-props';
import { type FigureShape, figureShape, legMiddle, tapePath } from './tape-paths';

/** A figure from the waist to the floor with the tape where the measurement that is being typed is taken. */
export function BodyFigure({ draft }: DrawingProps) {
  const field = useBench((state) => state.field);
  const f = figureShape(draft.body);
  const typed = field?.startsWith('body.') ? (field.slice(5) as MeasurementKey) : undefined;
  const always = measurements.filter((one) => one.required && one.key !== typed).map((one) => one.key);
  return (
    <>
      {([1, -1] as const).map((side) => (
        <g key={side}>
          <path className="figure-ground" d={`${figureText(f, side)}V-50Z`} />
          <path className="figure" d={figureText(f, side)} />
        </g>
      ))}
      <path className="line line-level" d={`M${-f.hip - 60} ${f.floor}H${f.hip + 60}`} />
      {always.map((key) => (
        <Tape key={key} measurement={key} shape={f} draft={draft} lit={false} />
      ))}
      {typed && <Tape measurement={typed} shape={f} draft={draft} lit />}
    </>
  );
}

/** One half of the figure: the outer line down, the foot, the inner line up. */
function figureText(f: FigureShape, side: 1 | -1): string {
  const leg = legMiddle(f);
  const calfLevel = f.kneeLevel + (f.floor - f.kneeLevel) * 0.3;
  const x = (value: number) => side * value;
  const foot = f.floor - 60;
  return [
    `M${x(f.waist)} ${-50}C${x(f.waist * 0.98)} -20 ${x(f.waist * 0.98)} -10 ${x(f.waist)} 0`,
    `C${x(f.waist * 1.04)} ${f.hipLevel * 0.4} ${x(f.hip)} ${f.hipLevel * 0.55} ${x(f.hip)} ${f.hipLevel}`,
    `C${x(f.hip)} ${f.crotchLevel + 90} ${x(leg + f.knee)} ${f.kneeLevel - 130} ${x(leg + f.knee)} ${f.kneeLevel}`,
    `C${x(leg + f.knee * 1.12)} ${calfLevel} ${x(leg + f.knee * 1.1)} ${calfLevel + 30} ${x(leg + f.ankle)} ${foot}`,
    `l${x(f.ankle * 0.9)} 50q${x(4)} 10 ${x(-8)} 10h${x(-f.ankle * 2.1)}q${x(-8)} 0 ${x(-6)} -14L${x(leg - f.ankle)} ${foot}`,
    `C${x(leg - f.knee * 1.05)} ${calfLevel + 30} ${x(leg - f.knee * 1.05)} ${calfLevel} ${x(leg - f.knee)} ${f.kneeLevel}`,
    `C${x(leg - f.knee)} ${f.kneeLevel - 130} ${x(6)} ${f.crotchLevel + 90} 0 ${f.crotchLevel}`,
  ].join('');
}

interface TapeProps extends DrawingProps {
  readonly measurement: MeasurementKey;
  readonly shape: FigureShape;
  readonly lit: boolean;
}

function Tape({ measurement, shape, draft, lit }: TapeProps) {
  const units = useBench((state) => state.project.units);
  const path = tapePath(measurement, shape);
  if (!path) return null;
  const taken = draft.project.body[measurement] ?? draft.body.estimates.find((one) => one.key === measurement)?.value;
  const name = measurements.find((one) => one.key === measurement)?.name ?? '';
  const words = taken === undefined ? name : `${name} ${formatLength(taken, units)}`;
  const className = lit ? 'tape tape-lit' : 'tape';
  const wordClass = lit ? 'word-number' : 'word-note';
  if ('round' in path) {
    const { x, y, half } = path.round;
    const ry = half * 0.16;
    return (
      <>
        <path className={`${className} tape-behind`} d={`M${x - half} ${y}a${half} ${ry} 0 0 1 ${2 * half} 0`} />
        <path className={className} d={`M${x - half} ${y}a${half} ${ry} 0 0 0 ${2 * half} 0`} />
        {x === 0 ? (
          <Word at={{ x: -shape.hip - 24, y }} anchor="end" dy={4} className={wordClass}>
            {words}
          </Word>
        ) : (
          <Word at={{ x: shape.hip + 24, y }} anchor="start" dy={4} className={wordClass}>
            {words}
          </Word>
        )}
      </>
    );
  }
  const [[x, top], [, bottom]] = path.along;
  const middle = { x, y: (top + bottom) / 2 };
  return (
    <>
      <path className={className} d={`M${x} ${top}V${bottom}M${x - 12} ${top}h24M${x - 12} ${bottom}h24`} />
      {x === 0 ? (
        <Word at={middle} turn={-90} dy={-6} className={wordClass}>
          {words}
        </Word>
      ) : (
        <Word at={middle} anchor="start" dx={12} dy={4} className={wordClass}>
          {words}
        </Word>
      )}
    </>
  );
}
