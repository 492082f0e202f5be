import { type MeasurementKey, measurements } from '../../../body';
import type { AskedPlace } from '../asked-place';
import { bellyLine, smallOfBackLine } from './figure-lines';
import { type FigureShape, type FigureView, figureBox, figurePlaces, widest } from './figure-shape';

/** The tape on one view of the figure, in that view's own coordinates. */
export interface TapeMark {
  readonly view: FigureView;
  /** Where the tape is seen. */
  readonly seen: string;
  /** Where the body hides it. */
  readonly hidden?: string;
  /** Where its name and number stand, if they stand at this view. */
  readonly label?: { readonly x: number; readonly y: number; readonly anchor: 'start' | 'end' | 'middle' };
}

/** Where the tape goes for a measurement, on every view that shows it; nowhere for an age. */
export function tapeMarks(key: MeasurementKey, f: FigureShape): readonly TapeMark[] {
  const { half, legAt, fore, aft, hipLevel: hip, crotchLevel: crotch, unit: u } = f;
  switch (key) {
    case 'waistGirth':
      return trunk(f, 0, half.waist, fore.waist, aft.waist, true);
    case 'highHipGirth': {
      const [wide, before, behind] = [half.waist + half.hip, fore.waist + fore.hip, aft.waist + aft.hip];
      return trunk(f, hip / 2, 0.51 * wide, 0.515 * before, 0.5 * behind, false);
    }
    case 'hipGirth':
      return trunk(f, hip, half.hip, fore.hip, aft.hip, true);
    case 'thighGirth':
      return limb(f, f.thighLevel, legAt.thigh, half.thigh, fore.thigh, aft.thigh);
    case 'kneeGirth':
      return limb(f, f.kneeLevel, legAt.knee, half.knee, fore.knee, aft.knee);
    case 'calfGirth':
      return limb(f, f.calfLevel, legAt.knee, half.calf * 1.03, fore.calf, aft.calf);
    case 'ankleGirth':
      return limb(f, f.ankleLevel, legAt.ankle, half.ankle, fore.ankle, aft.ankle);
    case 'footEntryGirth':
      return footEntry(f);
    case 'hipDepth':
      return [downTheSide(f, hip)];
    case 'waistToKnee':
      return [downTheSide(f, f.kneeLevel)];
    case 'outsideLeg':
      return [downTheSide(f, f.floor)];
    case 'bodyRise':
      return [
        { view: 'seated', seen: dimension(0, 0, crotch), label: { x: rightOf(f), y: 0, anchor: 'start' } },
        downTheSide(f, crotch),
      ];
    case 'insideLeg': {
      const book = `M${-26 * u} ${crotch}h${52 * u}v${-10 * u}h${-52 * u}Z`;
      // Beside the leg, as the others: between the two legs there is no room for words.
      const label = { x: -widest(f) - 30 * u, y: crotch + 0.5 * (f.floor - crotch), anchor: 'end' } as const;
      return [{ view: 'front', seen: `${dimension(0, crotch, f.floor)}${book}`, label }];
    }
    case 'trouserInseam': {
      // Trousers hang a little below the crotch, and end a little above the floor.
      const [top, bottom] = [crotch + 30 * u, f.floor - 25 * u];
      const label = { x: -widest(f) - 30 * u, y: top + 0.6 * (bottom - top), anchor: 'end' } as const;
      return [{ view: 'front', seen: dimension(0, top, bottom), label }];
    }
    case 'crotchLength':
      return [
        { view: 'front', seen: `M0 0V${crotch}` },
        { view: 'back', seen: `M0 0V${crotch}` },
        {
          view: 'side',
          seen: `M${fore.waist} 0${bellyLine(f)}M${aft.hip} ${hip}${smallOfBackLine(f)}`,
          hidden: `${frontHidden(f)}C${0.5 * aft.hip} ${crotch + 4 * u} ${aft.hip} ${crotch} ${aft.hip} ${hip}`,
          label: { x: rightOf(f), y: 0.45 * crotch, anchor: 'start' },
        },
      ];
    case 'frontCrotchLength':
      return [
        { view: 'front', seen: `M0 0V${crotch}m${-14 * u} 0h${28 * u}` },
        {
          view: 'side',
          seen: `M${fore.waist} 0${bellyLine(f)}M0 ${crotch - 12 * u}v${24 * u}`,
          hidden: frontHidden(f),
          label: { x: rightOf(f), y: 0.45 * crotch, anchor: 'start' },
        },
      ];
    case 'height': {
      const x = half.hip + 130 * u;
      const seen = dimension(x, f.floor - f.height, f.floor);
      return [{ view: 'whole', seen, label: { x: x + 24 * u, y: 0, anchor: 'start' } }];
    }
    case 'ageYears':
      return [];
  }
}

/** Round a girth so much of the figure is seen up and down, of its height from waist to floor. */
const ROUND_A_GIRTH = 0.3;

/** Where a measurement's tape is seen best: the view that names it, of a girth no more than its neighbourhood. */
export function tapePlace(path: string, f: FigureShape): AskedPlace | undefined {
  const key = measurements.find((one) => `body.${one.key}` === path)?.key;
  const mark = key && tapeMarks(key, f).find(({ view, label }) => label && figureViews(key).includes(view));
  if (!key || !mark?.label) return undefined;
  const { x } = figurePlaces(f)[mark.view];
  const { top, bottom } = figureBox(f);
  const aside = 1.3 * Math.max(widest(f), Math.abs(mark.label.x));
  const isGirth = mark.label.anchor === 'end' && mark.hidden !== undefined;
  const [above, below] = [mark.label.y - ROUND_A_GIRTH * f.floor, mark.label.y + ROUND_A_GIRTH * f.floor];
  const across = { left: x - aside, right: x + aside };
  return { key, box: isGirth ? { ...across, top: above, bottom: below } : { ...across, top, bottom } };
}

/** The views that stand on the table while a measurement is typed: front, side and back, unless it needs another. */
export function figureViews(key: MeasurementKey | undefined): readonly FigureView[] {
  if (key === 'bodyRise') return ['front', 'seated'];
  if (key === 'height') return ['front', 'whole'];
  return ['front', 'side', 'back'];
}

/** A body seen from head to foot is drawn smaller, so that it stands in the height of the others. */
export const viewScale = (view: FigureView, f: FigureShape): number =>
  view === 'whole' ? (f.floor + f.ribs) / f.height : 1;

/** Beyond everything that the side view has to the front. */
const rightOf = (f: FigureShape): number => Math.max(f.fore.waist, f.fore.hip, f.fore.thigh) + 30 * f.unit;

const dimension = (x: number, top: number, bottom: number): string =>
  `M${x - 12} ${top}h24M${x} ${top}V${bottom}M${x - 12} ${bottom}h24`;

const downTheSide = (f: FigureShape, to: number): TapeMark => ({
  view: 'side',
  seen: dimension(0, 0, to),
  label: { x: rightOf(f), y: Math.min(0.5 * to, 0.5 * f.kneeLevel), anchor: 'start' },
});

/** From the front of the hip under the body, to the point between the legs where the inseams meet. */
const frontHidden = ({ fore, hipLevel: hip, crotchLevel: crotch, unit: u }: FigureShape): string =>
  `M${fore.hip} ${hip}C${fore.hip * 0.97} ${crotch} ${0.5 * fore.hip} ${crotch + 4 * u} 0 ${crotch}`;

/** The two halves of a level loop: the near one sags a little, as a tape does. */
function loop(x: number, y: number, halfWidth: number): Pick<TapeMark, 'seen' | 'hidden'> {
  const arc = (sweep: 0 | 1) =>
    `M${x - halfWidth} ${y}a${halfWidth} ${halfWidth * 0.15} 0 0 ${sweep} ${2 * halfWidth} 0`;
  return { seen: arc(0), hidden: arc(1) };
}

function trunk(
  f: FigureShape,
  y: number,
  halfWidth: number,
  before: number,
  behind: number,
  onBack: boolean,
): readonly TapeMark[] {
  const round = loop(0, y, halfWidth);
  const label = { x: -widest(f) - 30 * f.unit, y, anchor: 'end' } as const;
  return [
    { view: 'front', ...round, label },
    { view: 'side', ...loop((before + behind) / 2, y, (before - behind) / 2) },
    ...(onBack ? [{ view: 'back', ...round } as const] : []),
  ];
}

function limb(
  f: FigureShape,
  y: number,
  middle: number,
  halfWidth: number,
  before: number,
  behind: number,
): readonly TapeMark[] {
  const label = { x: -widest(f) - 30 * f.unit, y, anchor: 'end' } as const;
  return [
    { view: 'front', ...loop(-middle, y, halfWidth), label },
    { view: 'side', ...loop((before + behind) / 2, y, (before - behind) / 2) },
    { view: 'back', ...loop(middle, y, halfWidth) },
  ];
}

/** Slanting round the heel and over the instep. */
function footEntry(f: FigureShape): readonly TapeMark[] {
  const { unit: u, fore, heel, floor, ankleLevel, half, legAt } = f;
  const from = `M${fore.ankle + 7 * u} ${ankleLevel + 22 * u}`;
  const to = `${heel + 3 * u} ${floor - 10 * u}`;
  const middle = (fore.ankle + heel) / 2;
  const y = ankleLevel + 26 * u;
  return [
    {
      view: 'side',
      seen: `${from}Q${middle + 18 * u} ${floor - 14 * u} ${to}`,
      hidden: `${from}Q${middle - 16 * u} ${floor - 52 * u} ${to}`,
      label: { x: fore.ankle + 24 * u, y: ankleLevel - 16 * u, anchor: 'start' },
    },
    {
      view: 'front',
      seen: `M${-legAt.ankle - 1.15 * half.ankle} ${y + 14 * u}Q${-legAt.ankle} ${y - 26 * u} ${-legAt.ankle + half.ankle} ${y + 14 * u}`,
    },
  ];
}
