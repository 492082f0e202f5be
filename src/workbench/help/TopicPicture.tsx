import type { ReactNode } from 'react';
import { pictureOf, type Station } from '../../project';
import { printPhrase } from '../../words';
import { placeOnDrawing } from '../stations/check/place';
import { useBench } from '../store/bench';
import { TapeFigure } from '../table/drawings/BodyFigure';
import { StepDrawing } from '../table/drawings/SewingDrawing';
import { FramedDrawing } from '../table/FramedDrawing';
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
        <FramedDrawing station="sew" box={picture.box} says={printPhrase(picture.says, units)}>
          <StepDrawing picture={picture} />
        </FramedDrawing>
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
    <FramedDrawing station={station} box={box(draft)} says={says ?? printPhrase(whole(draft), units)}>
      {instead ?? <Drawing draft={draft} />}
      {children}
    </FramedDrawing>
  );
}
