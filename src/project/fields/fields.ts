import { HEM_FINISHES, WAIST_FINISHES } from '../../edges';
import { LENGTH_NAMES, type LengthName } from '../../leg';
import type { Units } from '../../length';
import {
  LARGEST_PAGE,
  LEAST_SCALE,
  SMALLEST_PAGE,
  WIDEST_CORRECTION,
  WIDEST_MARGIN,
  WIDEST_PROJECTED,
} from '../../sheets';
import { BLOCK_SOURCES } from '../../trace';
import { type Phrase, say } from '../../words';
import { answer, autoFigure, autoLength, count, figure, length, nameOrLength, oneOf, text, yesOrNo } from './kinds';

/** Seam allowances: 15 mm where people measure in centimetres, ⅝ in where in inches. @source practice */
const ALLOWANCE: Readonly<Record<Units, number>> = { cm: 15, inch: 15.875 };
const LENGTHS = Object.keys(LENGTH_NAMES) as readonly LengthName[];
const CORDS = ['bought', 'ofCloth'] as const;

/** A line of the projector's test: its true length over what it measured. */
const projected = (name: Phrase) => autoFigure(name, 1 - WIDEST_PROJECTED, 1 + WIDEST_PROJECTED);

/** What stands in the project itself, in no group. */
export const ROOT_FIELDS = {
  name: text(say`Name`, 'Lounge pants'),
  units: oneOf(say`Units`, ['cm', 'inch'], 'cm'),
};

/** By how much one side of the body may differ from the other. */
const sideFields = (hip: Phrase, seat: Phrase, higher: Phrase, leg: Phrase) => ({
  fullerHip: length(hip, 0, 60, 0),
  fullerSeat: length(seat, 0, 60, 0),
  higherHip: length(higher, 0, 40, 0),
  longerLeg: length(leg, 0, 60, 0),
});

/**
 * Every choice of a project, by group: what people call it, between which limits it lies, what it is where it is left
 * out. The schema, the types, the limits on the screen, the remedies that may be proposed and the refusals follow from
 * this list. Measurements have a catalogue of their own (`body`).
 */
export const FIELDS = {
  use: { forSleeping: answer(say`Worn for sleeping`) },
  /** Of a block that is drafted; one that is brought has lines of its own. */
  block: {
    source: oneOf(say`Blocks`, BLOCK_SOURCES, 'drafted'),
    hipEase: length(say`Ease at the hip`, -200, 400, 50.8),
    waistEase: length(say`Ease at the waist`, 0, 200, 25),
    riseEase: autoLength(say`Ease in the rise`, 0, 100),
    crotchEase: autoLength(say`Ease in the crotch length`, -30, 150),
    balance: length(say`Balance`, -30, 40, 10),
  },
  cloth: {
    kind: oneOf(say`Cloth`, ['woven', 'knit'], 'woven'),
    stretch: figure(say`Stretch`, 0, 2, 0),
    washFirst: yesOrNo(say`The cloth is`, true),
    width: length(say`Width of the cloth`, 300, 3200, 1500),
    oneWay: yesOrNo(say`Pieces lie`, false),
    shrinkLength: figure(say`Shrinks in length`, 0, 0.3, 0.03),
    shrinkWidth: figure(say`Shrinks in width`, 0, 0.3, 0.02),
    repeat: length(say`Repeat along`, 0, 1500, 0),
    repeatAcross: length(say`Repeat across`, 0, 1500, 0),
    grainTolerance: figure(say`Off the grain`, 0, 5, 0),
    layout: oneOf(say`The cloth lies`, ['best', 'single', 'foldedLengthwise', 'foldedCrosswise'], 'best'),
    /** How far inside the back crotch point the fork's tip is cut off and sewn on again; 0 where the leg stays whole. */
    piecedTip: length(say`Pieced fork tip`, 0, 90, 0),
  },
  leg: {
    spread: length(say`Spread`, 0, 250, 25.4),
    straighten: autoFigure(say`Straighten the centres`, 0, 1),
    raiseWaist: length(say`Raise the waist`, -120, 150, 0),
    lowerCrotch: length(say`Lower the crotch`, 0, 100, 0),
    length: nameOrLength(say`Length`, LENGTHS, 'full', { key: 'inseam', name: say`Inseam`, lowest: 30, highest: 1300 }),
    shape: nameOrLength(say`Shape`, ['pyjama', 'block', 'straight'], 'pyjama', {
      key: 'hemGirth',
      name: say`Hem girth`,
      lowest: 120,
      highest: 2400,
    }),
  },
  waist: {
    finish: oneOf(say`Waist finish`, WAIST_FINISHES, 'elasticCasing'),
    elasticWidth: length(say`Elastic width`, 3, 80, 25.4),
    rows: count(say`Rows of elastic`, [1, 2, 3, 4], 1),
    turnOfCloth: length(say`Turn of the cloth`, 0, 12, 3.2),
    elastic: oneOf(say`The elastic is`, ['threaded', 'sewnOn'], 'threaded'),
    rawEdge: oneOf(say`The raw edge is`, ['overlocked', 'turnedUnder'], 'overlocked'),
    elasticLength: autoLength(say`Elastic length`, 100, 3000),
    elasticStretch: figure(say`Stretch of the elastic`, 0, 2, 0.7),
    cordWidth: length(say`Cord width`, 2, 40, 10),
    cordLength: autoLength(say`Cord length`, 300, 5000),
    cord: oneOf(say`The cord is`, CORDS, 'bought'),
    bandHeight: length(say`Band height`, 10, 150, 60),
    bandStretch: figure(say`Stretch of the band`, 0, 2, 1),
  },
  hem: {
    finish: oneOf(say`Hem finish`, HEM_FINISHES, 'turned'),
    depth: length(say`Hem depth`, 5, 120, 30),
    turnUnder: autoLength(say`Turned under`, 0, 30),
    elasticWidth: length(say`Hem elastic width`, 3, 50, 12.7),
    cordWidth: length(say`Hem cord width`, 2, 20, 6),
    cordLength: autoLength(say`Hem cord length`, 100, 3000),
    cord: oneOf(say`The hem’s cord is`, CORDS, 'bought'),
    bandHeight: length(say`Height of the band`, 10, 200, 60),
    ribStretch: figure(say`Stretch of the rib`, 0, 2, 0.5),
  },
  allowances: {
    inseam: length(say`Inseam allowance`, 0, 40, ALLOWANCE),
    crotch: length(say`Crotch allowance`, 0, 40, ALLOWANCE),
    waist: length(say`Waist allowance`, 0, 40, ALLOWANCE),
    hem: length(say`Hem allowance`, 0, 40, ALLOWANCE),
  },
  pocket: {
    width: length(say`Pocket width`, 40, 300, 150),
    height: length(say`Pocket height`, 40, 350, 165),
    facing: length(say`Pocket facing`, 10, 80, 30),
    part: oneOf(say`The pocket is`, ['front', 'back'], 'back'),
    count: count(say`Pockets`, [1, 2], 1),
  },
  sewing: { machine: oneOf(say`Machine`, ['plain', 'serger'], 'plain') },
  fit: {
    flatSeat: length(say`Flat seat`, 0, 40, 0),
    fullSeat: length(say`Full seat`, 0, 40, 0),
    fullThigh: length(say`Full thighs`, 0, 40, 0),
    swayBack: length(say`Hollow back`, 0, 40, 0),
    prominentAbdomen: length(say`Prominent abdomen`, 0, 40, 0),
    sittingPull: length(say`Pull when sitting`, 0, 40, 0),
    seated: length(say`Worn sitting`, 0, 60, 0),
    knockKnees: length(say`Knees that touch`, -25, 25, 0),
  },
  /** What one side has more than the measurements say; a group within a group. */
  'sides.left': sideFields(say`Left hip fuller`, say`Left seat fuller`, say`Left hip higher`, say`Left leg longer`),
  'sides.right': sideFields(
    say`Right hip fuller`,
    say`Right seat fuller`,
    say`Right hip higher`,
    say`Right leg longer`,
  ),
  /** How the pattern is thrown on the cloth: its lines and ground, and what the lines of the projector's test measured there. */
  projector: {
    line: length(say`Projected cut line`, 0.3, 6, 1.5),
    ground: oneOf(say`Projected ground`, ['dark', 'light'], 'dark'),
    test: oneOf(say`Lines to measure`, ['large', 'small'], 'large'),
    across: projected(say`Line A to B`),
    down: projected(say`Line A to D`),
    diagonalAC: projected(say`Diagonal A to C`),
    diagonalBD: projected(say`Diagonal B to D`),
  },
  paper: {
    sheet: text(say`Paper`, 'A4'),
    orientation: oneOf(say`Turned`, ['auto', 'portrait', 'landscape'], 'auto'),
    margin: length(say`Margin`, 0, WIDEST_MARGIN, 10),
    /** As the test page showed it; “auto” where nobody looked. */
    printerMargin: autoLength(say`Printer’s margin`, 0, WIDEST_MARGIN),
    overlap: length(say`Overlap`, 0, 40, 10),
    ownWidth: length(say`Width of the sheet`, SMALLEST_PAGE, LARGEST_PAGE, 900),
    ownHeight: length(say`Height of the sheet`, SMALLEST_PAGE, LARGEST_PAGE, 1500),
    scale: figure(say`Scale`, LEAST_SCALE, 1, 1),
    /** Of a sample below true size: whether the seam allowances are drawn smaller too. */
    allowances: oneOf(say`Allowances`, ['scaled', 'full'], 'scaled'),
    correctX: figure(say`The short bar measures`, 1 - WIDEST_CORRECTION, 1 + WIDEST_CORRECTION, 1),
    correctY: figure(say`The long bar measures`, 1 - WIDEST_CORRECTION, 1 + WIDEST_CORRECTION, 1),
  },
};

/** What people call a group, and the project itself. */
export const GROUP_NAMES = {
  project: say`The project`,
  body: say`Starting body`,
  'body.label': say`Who it is for`,
  'body.nappy': say`Nappy`,
  block: say`Blocks`,
  leg: say`The leg`,
  pocket: say`Pocket`,
  fit: say`After wearing`,
  sides: say`Left and right`,
  'sides.left': say`Left side`,
  'sides.right': say`Right side`,
  lastPrint: say`Last print`,
};

/** Groups that may be `null`, and are where they are left out: no pocket, no correction, two sides alike. */
export const MAY_BE_NONE: readonly string[] = ['pocket', 'fit', 'sides'];
