import { formatLength, MM_PER_INCH, type Mm, type Units } from '../../length';
import { useBench } from '../store/bench';
import { CLICK, type Exactness } from './flat';

/** As near as a block is traced by hand, and as far off as a loose pant still bears, millimetres. @source practice */
const GOOD: Mm = 2;
const MIND: Mm = 5;

/** How far off the paper may be, as a verdict with its reason and what to do. */
export function ExactnessNote({
  exactness,
  where,
}: {
  readonly exactness: Exactness | undefined;
  readonly where: string;
}) {
  const units = useBench((state) => state.project.units);
  if (!exactness)
    return (
      <p className="photo-exact" data-verdict="wrong" role="status">
        <strong>Wrong</strong> This picture can’t be flattened as far as that: lay the marks farther apart, and
        photograph from more nearly above.
      </p>
    );
  const { byMarks, check, off } = exactness;
  const verdict = off <= GOOD ? 'good' : off <= MIND ? 'mind' : 'wrong';
  const advice =
    verdict === 'good'
      ? ''
      : check && check.across > byMarks
        ? ' The fifth length does not agree: are the sides measured, the corners square, the paper flat?'
        : ' It gets better with marks that lie farther apart, round the block, and with a sharper picture.';
  return (
    <p className="photo-exact" data-verdict={verdict} role="status">
      <strong>{verdict === 'good' ? 'Good' : verdict === 'mind' ? 'Mind' : 'Wrong'}</strong> {where} ±{' '}
      {tenths(off, units)}, if every mark lies within {CLICK} pixel of its place.
      {check && ` The fifth length comes out as ${formatLength(check.found, units)}.`}
      {advice}
    </p>
  );
}

/** Small lengths need more than a tape's steps: tenths of a millimetre, hundredths of an inch. */
const tenths = (mm: Mm, units: Units): string =>
  units === 'cm' ? `${mm.toFixed(mm < 9.95 ? 1 : 0)} mm` : `${(mm / MM_PER_INCH).toFixed(2)} in`;
