import { leastSquares, type Solved } from '../../plane';
import { type Problem, type Result, say } from '../../words';
import { type Lens, TRUE_LENS } from './lens';
import { rowsOf } from './rows';
import type { ShotView } from './shot-view';
import type { MarkSeen, Sightings } from './sightings';
import { firstGuess } from './start';
import { type SheetPlace, sheetAt, sheetPlaceFrom, shotAt, type Unknowns, viewFrom } from './unknowns';
import { type Group, wrongGroup } from './wrong';

/** Pictures joined on one plane, whose millimetres are those of the first sheet. */
export interface Joined {
  readonly views: readonly ShotView[];
  /** Whether anything told of a shot's lens; else it is taken to draw straight lines straight. */
  readonly lensKnown: readonly boolean[];
  /** Where each sheet lies; undefined where none of its marks is seen. */
  readonly sheets: readonly (SheetPlace | undefined)[];
  /** Marks that lie so far beside their places that they were left out, the worst first. */
  readonly wrong: readonly MarkSeen[];
  /** How many times farther off their places the marks lie than was said of them; never less than 1. */
  readonly spread: number;
  /** What was joined, without the wrong marks, and the solution, for all that is asked of it later. */
  readonly sightings: Sightings;
  readonly unknowns: Unknowns;
  readonly solved: Solved;
}

/** Lenses to begin with: true, a telephone's at its widest, and a barrel. The first that leads to a fit is taken, else the best. @source practice */
const LENSES: readonly Lens[] = [TRUE_LENS, { k1: 0.08, k2: 0 }, { k1: 0.17, k2: 0 }, { k1: -0.05, k2: 0 }];
/** Marks that lie so many times farther off than was said are still a fit: one of them may be wrong. @source tolerance */
const FIT = 3;
/** No more than this share of the marks is left out as wrong. @source tolerance */
const MOST_WRONG = 0.2;

/**
 * Joins pictures of one plane: the homography and the lens of each, and where each sheet lies, by weighted least squares
 * over all that is seen. A mark that is off beyond chance is left out and told.
 *
 * One shot that shows four single places and nothing else comes out as the homography through them.
 *
 * @source R. Hartley & A. Zisserman, *Multiple View Geometry in Computer Vision*, 2nd ed. 2004, chapters 4, 7 and 18, from memory
 * @returns the joined pictures, or a problem for each picture that shares nothing with the others
 */
export function joinShots(sightings: Sightings): Result<Joined> {
  const fits: Fit[] = [];
  let problems: readonly Problem[] = [];
  for (const lens of LENSES) {
    const guess = firstGuess(sightings, lens);
    problems = guess.apart.map(
      (shot): Problem => ({
        field: `photograph-${shot + 1}`,
        value: undefined,
        phrase: say`shows too few marks that lie on a sheet or on another photograph, or marks that cross over; four that go round do.`,
      }),
    );
    if (problems.length > 0) continue;
    const fit = fitted(sightings, guess.unknowns);
    if (fit) fits.push(fit);
    if (fit && fit.spread < FIT) break;
  }
  const best = fits.toSorted((a, b) => a.spread - b.spread)[0];
  if (best) return { ok: true, value: withoutWrong(best) };
  const none: Problem = {
    field: 'photographs',
    value: undefined,
    phrase: say`don’t show one flat floor: are the marks on their places?`,
  };
  return { ok: false, problems: problems.length > 0 ? problems : [none] };
}

interface Fit {
  readonly sightings: Sightings;
  readonly unknowns: Unknowns;
  readonly solved: Solved;
  readonly redundancy: number;
  readonly spread: number;
}

function fitted(sightings: Sightings, unknowns: Unknowns): Fit | undefined {
  const solved = leastSquares(unknowns.values, unknowns.free, (values) => rowsOf(sightings, unknowns, values));
  if (!solved) return undefined;
  const redundancy = solved.rows.length - unknowns.free.filter(Boolean).length;
  const spread = redundancy > 0 ? Math.max(1, Math.sqrt(solved.cost / redundancy)) : 1;
  return { sightings, unknowns: { ...unknowns, values: solved.unknowns }, solved, redundancy, spread };
}

/** Marks that are wrong left out one by one, each time fitted anew. */
function withoutWrong(first: Fit): Joined {
  const most = MOST_WRONG * first.sightings.marks.length;
  const wrong: MarkSeen[] = [];
  let fit = first;
  while (wrong.length + 1 <= most) {
    const { marks } = fit.sightings;
    const found = wrongGroup(fit.solved.rows, fit.solved.triangle, groupsOf(marks), fit.redundancy);
    const mark = found === undefined ? undefined : marks[found];
    const next = mark && fitted({ ...fit.sightings, marks: marks.filter((one) => one !== mark) }, fit.unknowns);
    if (!mark || !next) break;
    wrong.push(mark);
    fit = next;
  }
  return joinedOf(fit, wrong);
}

/** The rows of the marks come first, two for each place. */
function groupsOf(marks: readonly MarkSeen[]): readonly Group[] {
  let from = 0;
  return marks.map(({ at }) => {
    const to = from + 2 * at.length;
    const group = { from, to };
    from = to;
    return group;
  });
}

function joinedOf({ sightings, unknowns, solved, spread }: Fit, wrong: readonly MarkSeen[]): Joined {
  const { values, middles, free, places } = unknowns;
  return {
    views: sightings.shots.map((shot, i) => viewFrom(shot, values, shotAt(i), middles[i] as (typeof middles)[number])),
    lensKnown: sightings.shots.map((_, i) => free[shotAt(i) + 8] as boolean),
    sheets: sightings.sheets.map((_, i) =>
      i === 0 || free[sheetAt(places, i)] ? sheetPlaceFrom(values, sheetAt(places, i)) : undefined,
    ),
    wrong,
    spread,
    sightings,
    unknowns,
    solved,
  };
}
