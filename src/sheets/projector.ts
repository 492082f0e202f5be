import { MM_PER_INCH, type Mm, type Units } from '../length';
import { degrees, mm, number, type Phrase, type Result, say } from '../words';

/** What was measured of the projector's test, each as its true length over what it measured; `auto` where it was not. */
export interface ProjectorMeasured {
  readonly test: 'large' | 'small';
  readonly across: number | 'auto';
  readonly down: number | 'auto';
  readonly diagonalAC: number | 'auto';
  readonly diagonalBD: number | 'auto';
}

/** The lines of the test, a rectangle with the corners A, B, C, D clockwise from the upper left one; true lengths. */
export interface ProjectorTest {
  /** A to B, and D to C. */
  readonly across: Mm;
  /** A to D, and B to C. */
  readonly down: Mm;
  /** A to C, and B to D. */
  readonly diagonal: Mm;
}

/**
 * How a drawing is changed before it is projected, so that it comes out true:
 * x becomes `across` · x + `slant` · y, and y becomes `down` · y.
 */
export interface ProjectorCorrection {
  readonly across: number;
  readonly down: number;
  readonly slant: number;
  /** By how much the projector opens the right angle at A, in degrees. */
  readonly skew: number;
  /** By how much the worst of four lengths contradicts the others; undefined where fewer were measured. */
  readonly misfit: Mm | undefined;
}

/** More than this is rather the projector's place than the projector. */
const MIND_BEYOND = 0.03;
const MIND_SKEW = 2;
const WIDEST_SKEW = 6;
/** Four lengths that are each read to a millimetre contradict each other by less, mm. */
const MIND_MISFIT: Mm = 2;
/** One of four that contradict each other by more was misread, or the picture is no parallelogram at all, mm. */
const WIDEST_MISFIT: Mm = 5;

/** Three to four to five: whoever knows a carpenter's square sees at once whether the corners are right. */
export function projectorTest(test: ProjectorMeasured['test'], units: Units): ProjectorTest {
  const step = (units === 'inch' ? 8 * MM_PER_INCH : 200) * (test === 'large' ? 1 : 1 / 2);
  return { across: 4 * step, down: 3 * step, diagonal: 5 * step };
}

/**
 * Finds out from lengths how a projector distorts, as far as lengths can tell it, and how that is undone.
 *
 * A projector that hangs square to the table but is scaled unevenly, or askew, shows the test's rectangle of W × H as a
 * parallelogram: its sides a = AB and b = AD enclose an angle at A, and the law of cosines says of its diagonals
 *
 *     AC² = a² + b² + 2ab·cos A        BD² = a² + b² − 2ab·cos A
 *
 * so that one diagonal gives the angle. Both give a condition beside it, AC² + BD² = 2a² + 2b²: four lengths that were
 * measured a little wrong are moved as little as can be, in the sum of squares, until it holds. For a condition f = 0 with
 * the gradient g that is a step of −f·g/|g|², repeated since f is not linear. The largest of the four moves is the misfit.
 *
 * With the picture's x along AB the projector does what the matrix [a/W, b·cos A/H; 0, b·sin A/H] does, and its inverse
 * undoes it. How far the picture is turned on the table can't be told by lengths, and doesn't matter: cloth is turned. A
 * keystone (opposite sides that differ) is no such matrix, and can't be undone by it; it shows in the misfit.
 *
 * @param units of the project, in whose round lengths the test is drawn
 * @returns undefined where nothing is corrected, for both sides must be known; a problem where the lengths can't belong to
 *   one picture
 * @source memory: Euclid, *Elements*, II 12 and 13 (the law of cosines); least squares under a condition: C. F. Gauss,
 *   *Theoria combinationis*, supplement, 1828
 */
export function projectorCorrection(
  measured: ProjectorMeasured,
  units: Units,
): Result<ProjectorCorrection | undefined> {
  const test = projectorTest(measured.test, units);
  if (measured.across === 'auto' || measured.down === 'auto') return { ok: true, value: undefined };
  const typed = { a: test.across / measured.across, b: test.down / measured.down };
  const [ac, bd] = [measured.diagonalAC, measured.diagonalBD].map((factor) =>
    factor === 'auto' ? undefined : test.diagonal / factor,
  );
  const { a, b, along, misfit } =
    ac !== undefined && bd !== undefined ? fittedFour({ ...typed, ac, bd }) : fromThree(typed, ac, bd);
  if (misfit !== undefined && misfit > WIDEST_MISFIT) return refused(measured, misfitTold(misfit));
  const skew = (Math.asin(Math.max(-1, Math.min(1, -along / b))) * 180) / Math.PI;
  if (Math.abs(skew) > WIDEST_SKEW) return refused(measured, skewTold(skew));
  const [wide, lean, high] = [a / test.across, along / test.down, Math.sqrt(b * b - along * along) / test.down];
  return { ok: true, value: { across: 1 / wide, down: 1 / high, slant: -lean / (wide * high), skew, misfit } };
}

/** The sides, and how far AD runs along AB: b · cos A. */
interface Shape {
  readonly a: Mm;
  readonly b: Mm;
  readonly along: Mm;
  readonly misfit?: Mm | undefined;
}

function fromThree({ a, b }: Pick<Shape, 'a' | 'b'>, ac: Mm | undefined, bd: Mm | undefined): Shape {
  if (ac !== undefined) return { a, b, along: (ac * ac - a * a - b * b) / (2 * a) };
  if (bd !== undefined) return { a, b, along: (a * a + b * b - bd * bd) / (2 * a) };
  return { a, b, along: 0 };
}

interface Four {
  readonly a: Mm;
  readonly b: Mm;
  readonly ac: Mm;
  readonly bd: Mm;
}

/** Steps until four lengths fit: each squares what is left of the contradiction, a hundredth at first. */
const STEPS = 4;

function fittedFour(typed: Four): Shape {
  let [a, b, ac, bd] = [typed.a, typed.b, typed.ac, typed.bd];
  for (let step = 0; step < STEPS; step += 1) {
    const f = ac * ac + bd * bd - 2 * a * a - 2 * b * b;
    const share = f / (16 * (a * a + b * b) + 4 * (ac * ac + bd * bd));
    [a, b, ac, bd] = [a + 4 * a * share, b + 4 * b * share, ac - 2 * ac * share, bd - 2 * bd * share];
  }
  const moves = [a - typed.a, b - typed.b, ac - typed.ac, bd - typed.bd];
  return { a, b, along: (ac * ac - bd * bd) / (4 * a), misfit: Math.max(...moves.map(Math.abs)) };
}

const refused = ({ diagonalAC, diagonalBD }: ProjectorMeasured, phrase: Phrase): Result<never> => ({
  ok: false,
  problems: [
    diagonalAC === 'auto'
      ? { field: 'projector.diagonalBD', value: diagonalBD, phrase }
      : { field: 'projector.diagonalAC', value: diagonalAC, phrase },
  ],
});

const misfitTold = (misfit: Mm): Phrase =>
  say`these diagonals can’t belong to these sides: one of the four lengths is off by ${mm(misfit)} or more, or the picture is wider at one end; set the projector square to the table and measure all four again.`;

const skewTold = (skew: number): Phrase =>
  say`with this diagonal the corner A would be ${degrees(Math.abs(skew))} off the square, more than a projector slants its picture: measure both sides and the diagonals again.`;

/** Of a correction: what is worth a look at the projector before it is relied upon. */
export function projectorRemarks({ across, down, skew, misfit }: ProjectorCorrection): readonly Phrase[] {
  const most = Math.max(Math.abs(across - 1), Math.abs(down - 1));
  return [
    ...(most > MIND_BEYOND + 1e-9
      ? [
          say`The projector is off by ${number(100 * most, 1)} %. Move it or set its zoom until less than ${number(100 * MIND_BEYOND)} % is left, and measure again: a small correction keeps the picture sharp.`,
        ]
      : []),
    ...(Math.abs(skew) > MIND_SKEW
      ? [
          say`The corner A is off the square by ${degrees(Math.abs(skew))}. More than ${degrees(MIND_SKEW)} is rarely the projector: see that it looks straight down, and measure again.`,
        ]
      : []),
    ...(misfit !== undefined && misfit > MIND_MISFIT
      ? [
          say`The four lengths contradict each other by ${mm(misfit)}: one was misread, or the picture is wider at one end. Compare A to B with D to C; where they differ, set the projector square to the table and measure again.`,
        ]
      : []),
  ];
}

/** What was corrected, for the papers and the screen. */
export function correctionTold({ across, down, skew, misfit }: ProjectorCorrection): Phrase {
  const factors = say`Corrected for one projector: × ${number(across, 4)} across, × ${number(down, 4)} down`;
  if (misfit === undefined) return say`${factors}, ${degrees(Math.abs(skew))} off the square.`;
  return say`${factors}, ${degrees(Math.abs(skew))} off the square; the four lengths miss each other by ${mm(misfit)}.`;
}
