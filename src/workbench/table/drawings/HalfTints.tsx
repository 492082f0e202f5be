import { useId } from 'react';

/** Larger than any leg, millimetres. */
const FAR = 4000;

export interface HalfTintsProps {
  /** The outline that is tinted, as path text. */
  readonly outline: string;
  /** Whether the front lies on the left. */
  readonly drawnLeft?: boolean;
}

/** The front's and the back's tint within an outline, either side of the side line x = 0. */
export function HalfTints({ outline, drawnLeft = false }: HalfTintsProps) {
  const id = useId();
  return (
    <>
      <clipPath id={`${id}back`}>
        <rect x={-FAR} y={-FAR} width={FAR} height={2 * FAR} />
      </clipPath>
      <clipPath id={`${id}front`}>
        <rect x={0} y={-FAR} width={FAR} height={2 * FAR} />
      </clipPath>
      <path className={drawnLeft ? 'tint-front' : 'tint-back'} d={outline} clipPath={`url(#${id}back)`} />
      <path className={drawnLeft ? 'tint-back' : 'tint-front'} d={outline} clipPath={`url(#${id}front)`} />
    </>
  );
}
