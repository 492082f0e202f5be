import type { CSSProperties, ReactNode } from 'react';
import type { Box } from '../../plane';
import { pictureOf, type Station } from '../../project';
import { printPhrase } from '../../words';
import { placeOnDrawing } from '../stations/check/place';
import { useBench } from '../store/bench';
import { TapeFigure } from '../table/drawings/BodyFigure';
import { StepDrawing } from '../table/drawings/SewingDrawing';
import { Lit, stepLines } from '../table/LitLines';
import { useStationDrawing } from '../table/use-station-drawing';
import type { Topic } from './topics';

/** The picture of a topic: the screen's own drawing, with what the topic tells of lit. */
export function TopicPicture({ topic: { subject, title } }: { readonly topic: Topic }) {
  const draft = useBench((state) => state.draft);
  const units = useBench((state) => state.project.units);
  const says = printPhrase(title, units);
  switch (subject.kind) {
    case 'station':
      return <OfStation station={subject.station} />;
    case 'measurement':
      return <OfStation station="body" says={says} instead={<TapeFigure draft={draft} typed={subject.key} />} />;
    case 'check':
      return (
        <OfStation station="check" says={says}>
          <Lit curves={[placeOnDrawing(draft, subject.check).curves]} />
        </OfStation>
      );
    case 'sewing': {
      const picture = pictureOf(draft, subject.step);
      return (
        <Framed station="sew" box={picture.box} says={printPhrase(picture.says, units)}>
          <StepDrawing picture={picture} />
        </Framed>
      );
    }
    case 'working':
      return subject.step.lines.length === 0 ? null : (
        <OfStation station={subject.step.station} says={says}>
          <Lit curves={stepLines(subject.step)} />
        </OfStation>
      );
  }
}

interface OfStationProps {
  readonly station: Station;
  readonly says?: string;
  /** Drawn over it. */
  readonly children?: ReactNode;
  /** Drawn in its place. */
  readonly instead?: ReactNode;
}

function OfStation({ station, says, children, instead }: OfStationProps) {
  const draft = useBench((state) => state.draft);
  const units = useBench((state) => state.project.units);
  const [, { Drawing, box, says: whole }] = useStationDrawing(station);
  return (
    <Framed station={station} box={box(draft)} says={says ?? printPhrase(whole(draft), units)}>
      {instead ?? <Drawing draft={draft} />}
      {children}
    </Framed>
  );
}

/** A picture at most so large, pixels, and the room round it for its words. */
const [WIDTH, HEIGHT, AROUND] = [360, 320, 28];

interface FramedProps {
  readonly station: Station;
  readonly box: Box;
  readonly says: string;
  readonly children: ReactNode;
}

function Framed({ station, box, says, children }: FramedProps) {
  const [wide, tall] = [box.right - box.left, box.bottom - box.top];
  const scale = Math.min((WIDTH - 2 * AROUND) / wide, (HEIGHT - 2 * AROUND) / tall);
  const around = AROUND / scale;
  return (
    <svg
      className="help-picture"
      role="img"
      aria-label={says}
      width={wide * scale + 2 * AROUND}
      height={tall * scale + 2 * AROUND}
      viewBox={`${box.left - around} ${box.top - around} ${wide + 2 * around} ${tall + 2 * around}`}
    >
      <g
        className="drawing"
        data-station={station}
        data-far="very"
        style={{ '--unzoomed': 1 / scale } as CSSProperties}
      >
        {children}
      </g>
    </svg>
  );
}
