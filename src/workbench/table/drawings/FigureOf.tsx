import { backLines, type FigureLines, frontLines, seatedLines, sideLines, wholeLines } from './figure-lines';
import type { FigureShape, FigureView } from './figure-shape';
import type { TapeMark } from './tape-paths';

const LINES: Readonly<Record<FigureView, (shape: FigureShape) => FigureLines>> = {
  front: frontLines,
  side: sideLines,
  back: backLines,
  seated: seatedLines,
  whole: wholeLines,
};

interface FigureOfProps {
  readonly view: FigureView;
  readonly shape: FigureShape;
  /** The tape of what is measured. */
  readonly lit: readonly TapeMark[];
  /** The tapes of what else is there. */
  readonly quiet?: readonly TapeMark[];
}

/** A figure from one side, in its own coordinates, with the tape on it. */
export function FigureOf({ view, shape, lit, quiet = [] }: FigureOfProps) {
  const { grounds, outlines, soft, furniture } = LINES[view](shape);
  return (
    <>
      {furniture && <path className="figure-chair" d={furniture} />}
      {grounds.map((d) => (
        <path key={d} className="figure-ground" d={d} />
      ))}
      {outlines.map((d) => (
        <path key={d} className="figure" d={d} />
      ))}
      {soft.map((d) => (
        <path key={d} className="figure-soft" d={d} />
      ))}
      {quiet.map((mark) => (
        <Tape key={mark.seen} mark={mark} className="tape" />
      ))}
      {lit.map((mark) => (
        <Tape key={mark.seen} mark={mark} className="tape tape-lit" />
      ))}
    </>
  );
}

function Tape({ mark, className }: { readonly mark: TapeMark; readonly className: string }) {
  return (
    <>
      {mark.hidden && <path className={`${className} tape-behind`} d={mark.hidden} />}
      <path className={className} d={mark.seen} />
    </>
  );
}
