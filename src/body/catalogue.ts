import { mm, own, type Phrase, say } from '../words';
import { TROUSERS_SHORTER } from './trousers';
import type { MeasurementKey } from './types';

/** One measurement of the catalogue: what it is, where the tape goes, and the limits beyond which nothing can be drafted. */
export interface Measurement {
  readonly key: MeasurementKey;
  readonly name: Phrase;
  /** What is measured. */
  readonly definition: Phrase;
  /** Where the tape goes. */
  readonly where: Phrase;
  /** Another way to get it, where no tape can be held so: mostly from trousers that fit. */
  readonly another?: Phrase;
  readonly required: boolean;
  /** What may be measured in its place; then it is estimated from that. */
  readonly inPlace?: MeasurementKey;
  readonly unit: 'mm' | 'years';
  /** Limits of what can be drafted, in the unit; a value outside is refused, never changed. */
  readonly lowest: number;
  readonly highest: number;
  /** Clause of ISO 8559-1:2017 where there is one: quoted from others or from memory, not read in the standard. */
  readonly iso?: string;
  readonly isoFrom?: 'quoted' | 'memory';
}

/**
 * The measurement catalogue, in the order in which a tape would take them.
 *
 * Limits: the youngest walkers (a two-year-old with the waist at the navel has a rise of 70–90) to half as large again
 * as the largest of the survey.
 *
 * @source names and clauses ISO 8559-1:2017, quoted; where the tape goes *Measurements for Fitting Pants*, New Mexico
 *   State University Extension, Guide C-209; limits ANSUR II (NATICK/TR-15/007, 2014), 6,068 people
 */
export const measurements: readonly Measurement[] = [
  {
    key: 'waistGirth',
    name: say`Waist`,
    definition: say`Round the body where the waist edge should sit.`,
    where: say`Tie a tape or elastic where the waistband will sit and leave it there; every height starts from it.`,
    another: say`Trousers that sit there and have no elastic: lay them flat, measure the top edge across and double it.`,
    required: true,
    unit: 'mm',
    lowest: 350,
    highest: 2100,
    iso: '5.3.10',
    isoFrom: 'quoted',
  },
  {
    key: 'hipGirth',
    name: say`Hip`,
    definition: say`Round the fullest part of the seat, tape level.`,
    where: say`Stand with your feet together; slide the tape up and down until it shows the most, and keep it level.`,
    another: say`Close trousers that fit: lay them flat, measure across the seat where it is widest, double it and take off about ${mm(50)} for their ease.`,
    required: true,
    unit: 'mm',
    lowest: 400,
    highest: 2100,
    iso: '5.3.13',
    isoFrom: 'quoted',
  },
  {
    key: 'hipDepth',
    name: say`Hip depth`,
    definition: say`From the waist down to the fullest part of the seat, along the side.`,
    where: say`From the tied tape straight down the side to the level at which the hip was measured.`,
    another: say`Trousers that fit and sit at the same waist: lay them flat and measure from the top edge down the side to where the seat is widest.`,
    required: false,
    unit: 'mm',
    lowest: 30,
    highest: 420,
  },
  {
    key: 'bodyRise',
    name: say`Body rise`,
    definition: say`From the waist down to the seat of a hard chair, sitting upright.`,
    where: say`Sit on a hard, flat chair; from the tied tape down the side to the chair.`,
    another: say`Trousers that fit and sit at the same waist: lay them flat and measure the side from the top edge to the hem, and the inseam from the crotch to the hem. The difference, less about ${mm(15)} for their ease, is the rise.`,
    required: true,
    unit: 'mm',
    lowest: 70,
    highest: 480,
  },
  {
    key: 'insideLeg',
    name: say`Inside leg`,
    definition: say`On the body, from the crotch to the floor, inside of the leg.`,
    where: say`Stand without shoes, feet slightly apart, a book held up at the crotch; from its top edge to the floor.`,
    another: say`Trousers of a good length: measure the inseam from the crotch to the hem; worn, see how far the hem ends above the floor, and add that.`,
    required: true,
    inPlace: 'trouserInseam',
    unit: 'mm',
    lowest: 180,
    highest: 1250,
    iso: '5.1.15',
    isoFrom: 'quoted',
  },
  {
    key: 'trouserInseam',
    name: say`Trouser inseam`,
    definition: say`Of trousers that fit: from the crotch seam to the hem, along the inside of the leg.`,
    where: say`Lay trousers of a good length flat, one leg folded back; from the point where the four seams meet to the edge of the hem.`,
    required: false,
    unit: 'mm',
    lowest: 180 - TROUSERS_SHORTER,
    highest: 1250 - TROUSERS_SHORTER,
  },
  {
    key: 'crotchLength',
    name: say`Crotch length`,
    definition: say`From the waist at the front, between the legs, to the waist at the back.`,
    where: say`From the tied tape at centre front, close between the legs, up to the tied tape at centre back.`,
    another: say`Trousers that fit and sit at the same waist: measure along the seam from the top edge in front, through the crotch, to the top edge at the back, and take off about ${mm(30)} for their ease.`,
    required: false,
    unit: 'mm',
    lowest: 250,
    highest: 1300,
    iso: '5.4.18',
    isoFrom: 'quoted',
  },
  {
    key: 'frontCrotchLength',
    name: say`Front crotch length`,
    definition: say`The front part of the crotch length, from the waist to the point where the inseams should meet.`,
    where: say`The same tape, read at the middle between the legs.`,
    another: say`On the same trousers: from the top edge in front to the point where the four seams meet.`,
    required: false,
    unit: 'mm',
    lowest: 90,
    highest: 700,
  },
  {
    key: 'highHipGirth',
    name: say`High hip`,
    definition: say`Round the abdomen, halfway between waist and hip.`,
    where: say`Level round the fullest part of the abdomen; needed where it is fuller than the hip.`,
    required: false,
    unit: 'mm',
    lowest: 350,
    highest: 2100,
    iso: '5.3.12',
    isoFrom: 'quoted',
  },
  {
    key: 'thighGirth',
    name: say`Thigh`,
    definition: say`Round the fullest part of the thigh.`,
    where: say`Just below the fold of the seat, tape level.`,
    required: false,
    unit: 'mm',
    lowest: 180,
    highest: 1200,
    iso: '5.3.20',
    isoFrom: 'quoted',
  },
  {
    key: 'kneeGirth',
    name: say`Knee`,
    definition: say`Round the knee, slightly flexed.`,
    where: say`Over the middle of the kneecap, the knee a little bent.`,
    required: false,
    unit: 'mm',
    lowest: 130,
    highest: 900,
    iso: '5.3.22',
    isoFrom: 'quoted',
  },
  {
    key: 'calfGirth',
    name: say`Calf`,
    definition: say`Round the fullest part of the calf.`,
    where: say`Tape level where it measures most below the knee.`,
    required: false,
    unit: 'mm',
    lowest: 110,
    highest: 800,
    iso: '5.3.24',
    isoFrom: 'quoted',
  },
  {
    key: 'ankleGirth',
    name: say`Ankle`,
    definition: say`Round the ankle bones.`,
    where: say`Over both ankle bones.`,
    required: false,
    unit: 'mm',
    lowest: 90,
    highest: 600,
    iso: '5.3.26',
    isoFrom: 'memory',
  },
  {
    key: 'footEntryGirth',
    name: say`Foot entry`,
    definition: say`Round the heel and over the instep: the least a hem has to pass over.`,
    where: say`Point the foot; round the heel and over the top of the instep.`,
    another: say`A closed loop of tape that just slips over the pointed foot: lay it flat and double it.`,
    required: false,
    unit: 'mm',
    lowest: 120,
    highest: 700,
  },
  {
    key: 'waistToKnee',
    name: say`Waist to knee`,
    definition: say`From the waist down to the middle of the knee, along the side.`,
    where: say`From the tied tape down the side to the middle of the kneecap.`,
    required: false,
    unit: 'mm',
    lowest: 150,
    highest: 1000,
  },
  {
    key: 'outsideLeg',
    name: say`Outside leg`,
    definition: say`From the waist to the floor, along the side.`,
    where: say`From the tied tape down the side, over the hip, to the floor. It checks rise and inside leg.`,
    another: say`Trousers of a good length: the side from the top edge to the hem, and how far the hem ends above the floor.`,
    required: false,
    unit: 'mm',
    lowest: 300,
    highest: 1700,
  },
  {
    key: 'height',
    name: say`Height`,
    definition: say`Standing height without shoes.`,
    where: say`From the top of the head to the floor.`,
    required: false,
    unit: 'mm',
    lowest: 600,
    highest: 2400,
    iso: '5.1.1',
    isoFrom: 'quoted',
  },
  {
    key: 'ageYears',
    name: say`Age`,
    definition: say`In years. Children are estimated by children’s figures, and their cautions depend on it.`,
    where: say`No tape: under eighteen, the estimates come from measured children.`,
    required: false,
    unit: 'years',
    lowest: 0,
    highest: 120,
  },
];

/** What people call a measurement. */
export function measurementName(key: MeasurementKey): Phrase {
  const found = measurements.find((one) => one.key === key);
  return found ? found.name : say`${own(key)}`;
}
