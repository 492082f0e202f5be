import { useId } from 'react';

/** From one stroke of a hatched side to the next, and from one dot to the next, millimetres of the cloth. */
const [STROKES, DOTS] = [26, 44];

/** How the lay's signs are drawn: by these names an area is filled with them. */
export interface LaySigns {
  readonly wrongSide: string;
  readonly printedDown: string;
}

/** The names of one drawing's signs. */
export function useLaySigns(): LaySigns {
  const id = useId();
  return { wrongSide: `${id}wrong`, printedDown: `${id}down` };
}

/**
 * The signs as they are in every picture of the sewing: strokes one way for the wrong side of cloth, dots for paper that
 * lies printed side down.
 */
export function LaySignPatterns({ wrongSide, printedDown }: LaySigns) {
  return (
    <defs>
      <pattern
        id={wrongSide}
        width={STROKES}
        height={STROKES}
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(-45)"
      >
        <path className="lay-stroke" d={`M0 ${STROKES / 2}H${STROKES}`} />
      </pattern>
      <pattern id={printedDown} width={DOTS} height={DOTS} patternUnits="userSpaceOnUse">
        <circle className="lay-dot" cx={DOTS / 4} cy={DOTS / 4} r={DOTS / 12} />
        <circle className="lay-dot" cx={(3 * DOTS) / 4} cy={(3 * DOTS) / 4} r={DOTS / 12} />
      </pattern>
    </defs>
  );
}
