import type { Mm } from '../../length';
import type { Exactness } from '../../trace';
import { inTurn, mm, printPhrase, said, say, UNSAID, words } from '../../words';
import { useBench } from '../store/bench';

/** As near as a block is traced by hand, and as far off as a loose pant still bears, millimetres. @source practice */
const GOOD: Mm = 2;
const DOUBTFUL: Mm = 5;
/** Paper on a floor is taken to be flat to this. @source practice */
const FLAT: Mm = 1;

/** How far off the paper may be, as a verdict with its reason and what to do. */
export function ExactnessNote({
  exactness,
  where,
}: {
  readonly exactness: Exactness | undefined;
  /** Whether it holds where the block was marked, or as long as nothing is, over most of the picture. */
  readonly where: 'marks' | 'most';
}) {
  const units = useBench((state) => state.project.units);
  if (!exactness)
    return (
      <p className="photo-exact" data-verdict="wrong" role="status">
        <strong>{words`Wrong`}</strong>{' '}
        {words`This picture can’t be flattened that far out: lay the marks farther apart, and photograph from more nearly above.`}
      </p>
    );
  const { byMarks, check, off, lensKnown, agreed } = exactness;
  const verdict = !agreed ? 'wrong' : off <= GOOD ? 'good' : off <= DOUBTFUL ? 'doubtful' : 'wrong';
  const advice = !agreed
    ? say`The marks don’t agree with each other: is one of them beside its place?`
    : verdict === 'good'
      ? UNSAID
      : check && check.across > byMarks
        ? say`The fifth length does not agree: are the sides measured, the corners square, the paper flat?`
        : say`It gets better with marks farther apart, round the block, and with a sharper picture.`;
  const by = mm(off);
  const told =
    where === 'marks'
      ? say`Where you marked it ± ${by}, with marks set to a pixel and paper flat to ${mm(FLAT)}.`
      : say`Over most of the picture ± ${by}, with marks set to a pixel and paper flat to ${mm(FLAT)}.`;
  const fifth = check ? say`The fifth length comes out as ${mm(check.found)}.` : UNSAID;
  const lens = lensKnown
    ? UNSAID
    : say`Four marks say nothing of the lens: keep the block away from the picture’s edges.`;
  return (
    <p className="photo-exact" data-verdict={verdict} role="status">
      <strong>{said(VERDICTS[verdict])}</strong> {printPhrase(inTurn([told, fifth, advice, lens]), units)}
    </p>
  );
}

const VERDICTS = { good: say`Good`, doubtful: say`Doubtful`, wrong: say`Wrong` };
