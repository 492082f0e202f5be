import { type MeasurementKey, measuredOf, measurementName, measurements } from '../../../body';
import { formatLength } from '../../../length';
import { type Phrase, said, say } from '../../../words';
import { isUnmeasured, isWaiting } from '../../store/asked';
import { useBench } from '../../store/bench';
import { Word } from '../Word';
import type { DrawingProps } from './drawing-props';
import { FigureOf } from './FigureOf';
import { type FigureShape, type FigureView, figurePlaces, figureShape, widest } from './figure-shape';
import { figureViews, tapeMarks, viewScale } from './tape-paths';

const CAPTIONS: Readonly<Record<FigureView, Phrase>> = {
  front: say`front`,
  side: say`side`,
  back: say`back`,
  seated: say`sitting`,
  whole: say`head to foot`,
};

/** Their names stand in one column beside the side view, so that one of them at a time is enough. */
const BESIDE_THE_SIDE: readonly MeasurementKey[] = [
  'hipDepth',
  'waistToKnee',
  'outsideLeg',
  'crotchLength',
  'frontCrotchLength',
];

/** A figure from several sides with the tape where the measurement that is being typed is taken. */
export function BodyFigure({ draft }: DrawingProps) {
  const field = useBench((state) => state.field);
  return <TapeFigure draft={draft} typed={measurements.find((one) => `body.${one.key}` === field)?.key} />;
}

interface TapeFigureProps extends DrawingProps {
  /** The measurement that is shown; undefined for those that are always taken. */
  readonly typed: MeasurementKey | undefined;
}

/** The same with the tape where a given measurement is taken. */
export function TapeFigure({ draft, typed }: TapeFigureProps) {
  const f = figureShape(draft.body, draft.project.body.height);
  const places = figurePlaces(f);
  const always = measurements
    .filter(({ required, key }) => required && key !== typed)
    .map(({ key }) => key)
    .filter((key) => !(key === 'bodyRise' && typed && BESIDE_THE_SIDE.includes(typed)));
  const right = places.back.x + widest(f) + 20 * f.unit;
  return (
    <>
      {figureViews(typed).map((view) => {
        const { x, y } = places[view];
        const scale = viewScale(view, f);
        const under = view === 'whole' ? f.floor * (1 - scale) : y;
        const marks = (key: MeasurementKey) => tapeMarks(key, f).filter((mark) => mark.view === view);
        return (
          <g key={view} className="figure-view" data-view={view} transform={`translate(${x} ${under}) scale(${scale})`}>
            <FigureOf view={view} shape={f} quiet={always.flatMap(marks)} lit={typed ? marks(typed) : []} />
          </g>
        );
      })}
      <path className="line line-level" d={`M${-widest(f) - 20 * f.unit} ${f.floor}H${right}`} />
      {figureViews(typed).map((view) => (
        <Word key={view} at={{ x: places[view].x, y: f.floor }} className="word-part">
          <tspan dy="1.25em">{said(CAPTIONS[view])}</tspan>
        </Word>
      ))}
      {[...always, ...(typed ? [typed] : [])].map((key) => (
        <TapeName key={key} measurement={key} shape={f} views={figureViews(typed)} draft={draft} lit={key === typed} />
      ))}
    </>
  );
}

interface TapeNameProps extends DrawingProps {
  readonly measurement: MeasurementKey;
  readonly shape: FigureShape;
  readonly views: readonly FigureView[];
  readonly lit: boolean;
}

/**
 * Name and number of a tape, once, at the first view that has room for them. No number that nobody has given yet, and none
 * that is estimated from such a one.
 */
function TapeName({ measurement, shape, views, draft, lit }: TapeNameProps) {
  const units = useBench((state) => state.project.units);
  const waits = useBench((state) => isWaiting(state, `body.${measurement}`));
  const estimates = useBench(isUnmeasured) ? [] : draft.body.estimates;
  const mark = tapeMarks(measurement, shape).find(({ view, label }) => label && views.includes(view));
  if (!mark?.label) return null;
  const place = figurePlaces(shape)[mark.view];
  const scale = viewScale(mark.view, shape);
  const sunk = mark.view === 'whole' ? shape.floor * (1 - scale) : place.y;
  const taken = measuredOf(draft.project.body)[measurement] ?? estimates.find((one) => one.key === measurement)?.value;
  const name = said(measurementName(measurement));
  const number = waits || taken === undefined ? '' : formatLength(taken, units);
  const besideBack = mark.view === 'side' && mark.label.anchor === 'start';
  return (
    <Word
      at={{ x: place.x + scale * mark.label.x, y: sunk + scale * mark.label.y }}
      anchor={mark.label.anchor}
      dy={4}
      className={lit ? 'word-number' : 'word-note'}
    >
      {besideBack ? inLines([...name.split(' '), number]) : `${name} ${number}`.trim()}
    </Word>
  );
}

/** Between the side view and the back view there is room for so many letters in a line. */
const MOST_LETTERS = 9;

/** Words under one another, in lines short enough to stand between two figures; what is written in one piece stays so. */
function inLines(words: readonly string[]) {
  const lines: string[] = [];
  for (const word of words) {
    const longer = `${lines.at(-1) ?? ''} ${word}`.trim();
    if (longer.length <= MOST_LETTERS) lines.splice(-1, 1, longer);
    else lines.push(word);
  }
  return lines.map((line, i) => (
    <tspan key={line} x={0} dy={i === 0 ? `${-0.6 * (lines.length - 1)}em` : '1.2em'}>
      {line}
    </tspan>
  ));
}
