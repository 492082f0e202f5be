import { HEM_FINISHES, WAIST_FINISHES } from '../../edges';
import { LENGTH_NAMES, type LengthName } from '../../leg';
import type { Units } from '../../length';
import { LARGEST_PAGE, LEAST_SCALE, SMALLEST_PAGE, WIDEST_CORRECTION, WIDEST_MARGIN } from '../../sheets';
import { autoFigure, autoLength, count, figure, length, nameOrLength, oneOf, text, yesOrNo } from './kinds';

/** Seam allowances: 15 mm where people measure in centimetres, ⅝ in where in inches. @source practice */
const ALLOWANCE: Readonly<Record<Units, number>> = { cm: 15, inch: 15.875 };
const LENGTHS = Object.keys(LENGTH_NAMES) as readonly LengthName[];
const CORDS = ['bought', 'ofCloth'] as const;

/** What stands in the project itself, in no group. */
export const ROOT_FIELDS = {
  name: text('Name', 'Lounge pants'),
  units: oneOf('Units', ['cm', 'inch'], 'cm'),
};

/** By how much one side of the body may differ from the other. */
const sideFields = <const S extends string>(side: S) => ({
  fullerHip: length(`${side} hip fuller`, 0, 60, 0),
  fullerSeat: length(`${side} seat fuller`, 0, 60, 0),
  higherHip: length(`${side} hip higher`, 0, 40, 0),
  longerLeg: length(`${side} leg longer`, 0, 60, 0),
});

/**
 * Every choice of a project, by group: what people call it, between which limits it lies, what it is where it is left
 * out. The schema, the types, the limits on the screen, the remedies that may be proposed and the refusals follow from
 * this list. Measurements have a catalogue of their own (`body`).
 */
export const FIELDS = {
  use: { forSleeping: yesOrNo('Slept in', false) },
  /** Of a block that is drafted; one that is brought has lines of its own. */
  block: {
    source: oneOf('Blocks', ['drafted', 'traced'], 'drafted'),
    hipEase: length('Ease at the hip', -200, 400, 50.8),
    waistEase: length('Ease at the waist', 0, 200, 25),
    riseEase: autoLength('Ease in the rise', 0, 100),
    crotchEase: autoLength('Ease in the crotch length', -30, 150),
    balance: length('Balance', -30, 40, 10),
  },
  cloth: {
    kind: oneOf('Cloth', ['woven', 'knit'], 'woven'),
    stretch: figure('Stretch', 0, 2, 0),
    washFirst: yesOrNo('The cloth is', true),
    width: length('Width of the cloth', 300, 3200, 1500),
    oneWay: yesOrNo('Pieces lie', false),
    shrinkLength: figure('Shrinks in length', 0, 0.3, 0.03),
    shrinkWidth: figure('Shrinks in width', 0, 0.3, 0.02),
    repeat: length('Repeat along', 0, 1500, 0),
    repeatAcross: length('Repeat across', 0, 1500, 0),
    grainTolerance: figure('Off the grain', 0, 5, 0),
    layout: oneOf('The cloth lies', ['best', 'single', 'foldedLengthwise', 'foldedCrosswise'], 'best'),
    /** How far inside the back crotch point the fork's tip is cut off and sewn on again; 0 where the leg stays whole. */
    piecedTip: length('Pieced fork tip', 0, 90, 0),
  },
  leg: {
    spread: length('Spread', 0, 250, 25.4),
    straighten: autoFigure('Straighten the centres', 0, 1),
    raiseWaist: length('Raise the waist', -120, 150, 0),
    lowerCrotch: length('Lower the crotch', 0, 100, 0),
    length: nameOrLength('Length', LENGTHS, 'full', { key: 'inseam', name: 'Inseam', lowest: 30, highest: 1300 }),
    shape: nameOrLength('Shape', ['pyjama', 'block', 'straight'], 'pyjama', {
      key: 'hemGirth',
      name: 'Hem girth',
      lowest: 120,
      highest: 2400,
    }),
  },
  waist: {
    finish: oneOf('Waist finish', WAIST_FINISHES, 'elasticCasing'),
    elasticWidth: length('Elastic width', 3, 80, 25.4),
    rows: count('Rows of elastic', [1, 2, 3, 4], 1),
    turnOfCloth: length('Turn of the cloth', 0, 12, 3.2),
    elastic: oneOf('The elastic is', ['threaded', 'sewnOn'], 'threaded'),
    rawEdge: oneOf('The raw edge is', ['overlocked', 'turnedUnder'], 'overlocked'),
    elasticLength: autoLength('Elastic length', 100, 3000),
    elasticStretch: figure('Stretch of the elastic', 0, 2, 0.7),
    cordWidth: length('Cord width', 2, 40, 10),
    cordLength: autoLength('Cord length', 300, 5000),
    cord: oneOf('The cord is', CORDS, 'bought'),
    bandHeight: length('Band height', 10, 150, 60),
    bandStretch: figure('Stretch of the band', 0, 2, 1),
  },
  hem: {
    finish: oneOf('Hem finish', HEM_FINISHES, 'turned'),
    depth: length('Hem depth', 5, 120, 30),
    turnUnder: autoLength('Turned under', 0, 30),
    elasticWidth: length('Hem elastic width', 3, 50, 12.7),
    cordWidth: length('Hem cord width', 2, 20, 6),
    cordLength: autoLength('Hem cord length', 100, 3000),
    cord: oneOf('The hem’s cord is', CORDS, 'bought'),
    bandHeight: length('Height of the band', 10, 200, 60),
    ribStretch: figure('Stretch of the rib', 0, 2, 0.5),
  },
  allowances: {
    inseam: length('Inseam allowance', 0, 40, ALLOWANCE),
    crotch: length('Crotch allowance', 0, 40, ALLOWANCE),
    waist: length('Waist allowance', 0, 40, ALLOWANCE),
    hem: length('Hem allowance', 0, 40, ALLOWANCE),
  },
  pocket: {
    width: length('Pocket width', 40, 300, 150),
    height: length('Pocket height', 40, 350, 165),
    facing: length('Pocket facing', 10, 80, 30),
    part: oneOf('The pocket is', ['front', 'back'], 'back'),
    count: count('Pockets', [1, 2], 1),
  },
  sewing: { machine: oneOf('Machine', ['plain', 'serger'], 'plain') },
  fit: {
    flatSeat: length('Flat seat', 0, 40, 0),
    fullSeat: length('Full seat', 0, 40, 0),
    fullThigh: length('Full thighs', 0, 40, 0),
    swayBack: length('Hollow back', 0, 40, 0),
    prominentAbdomen: length('Prominent abdomen', 0, 40, 0),
    sittingPull: length('Pull when sitting', 0, 40, 0),
    seated: length('Worn sitting', 0, 60, 0),
    knockKnees: length('Knees that touch', -25, 25, 0),
  },
  /** What one side has more than the measurements say; a group within a group. */
  'sides.left': sideFields('Left'),
  'sides.right': sideFields('Right'),
  /** How the pattern is thrown on the cloth: the cut line's width, and light lines on a dark ground or dark on light. */
  projector: {
    line: length('Projected cut line', 0.3, 6, 1.5),
    ground: oneOf('Projected ground', ['dark', 'light'], 'dark'),
  },
  paper: {
    sheet: text('Paper', 'A4'),
    orientation: oneOf('Turned', ['auto', 'portrait', 'landscape'], 'auto'),
    margin: length('Margin', 0, WIDEST_MARGIN, 10),
    overlap: length('Overlap', 0, 40, 10),
    ownWidth: length('Width of the sheet', SMALLEST_PAGE, LARGEST_PAGE, 900),
    ownHeight: length('Height of the sheet', SMALLEST_PAGE, LARGEST_PAGE, 1500),
    scale: figure('Scale', LEAST_SCALE, 1, 1),
    /** Of a sample below true size: whether the seam allowances are drawn smaller too. */
    allowances: oneOf('Allowances', ['scaled', 'full'], 'scaled'),
    correctX: figure('The short bar measures', 1 - WIDEST_CORRECTION, 1 + WIDEST_CORRECTION, 1),
    correctY: figure('The long bar measures', 1 - WIDEST_CORRECTION, 1 + WIDEST_CORRECTION, 1),
  },
};

/** What people call a group, and the project itself. */
export const GROUP_NAMES = {
  project: 'The project',
  body: 'Starting body',
  'body.nappy': 'Nappy',
  block: 'Blocks',
  leg: 'The leg',
  pocket: 'Pocket',
  fit: 'After wearing',
  sides: 'Left and right',
  'sides.left': 'Left side',
  'sides.right': 'Right side',
} as const;

/** Groups that may be `null`, and are where they are left out: no pocket, no correction, two sides alike. */
export const MAY_BE_NONE: readonly string[] = ['pocket', 'fit', 'sides'];
