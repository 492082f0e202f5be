import type { Curve } from '../plane';
import { type Phrase, say } from '../words';
import type { StraightKind } from './piece-names';

/** What a line on the piece means; each meaning has its own line type, on the screen and in print. */
export type LineKind = 'level' | 'side' | 'stitching' | 'waistEdge' | 'quarter' | 'opening' | 'lengthen' | 'place';

interface Line {
  readonly kind: LineKind;
  /** By which programs find it in the report and in drawings, whatever language people read: it stays as it is. */
  readonly key: string;
}

const LINES = {
  waistEdge: { kind: 'waistEdge', key: 'waist edge' },
  casingStitching: { kind: 'stitching', key: 'casing stitching' },
  channelStitching: { kind: 'stitching', key: 'channel stitching' },
  hip: { kind: 'level', key: 'hip' },
  crotchLine: { kind: 'level', key: 'crotch line' },
  knee: { kind: 'level', key: 'knee' },
  lengthenRise: { kind: 'lengthen', key: 'lengthen or shorten the rise here' },
  lengthenThigh: { kind: 'lengthen', key: 'lengthen or shorten the thigh here' },
  lengthenCalf: { kind: 'lengthen', key: 'lengthen or shorten the calf here' },
  side: { kind: 'side', key: 'side' },
  hemStitching: { kind: 'stitching', key: 'hem stitching' },
  quarter: { kind: 'quarter', key: 'quarter' },
  hemQuarter: { kind: 'quarter', key: 'hem quarter' },
  cordOpening: { kind: 'opening', key: 'cord opening' },
  hemCordOpening: { kind: 'opening', key: 'hem cord opening' },
  pocketPlace: { kind: 'place', key: 'pocket place' },
  /** Of one body among others. */
  cutLine: { kind: 'place', key: 'cut line' },
} as const satisfies Readonly<Record<string, Line>>;

/** The lines inside the pieces. */
export type LineName = keyof typeof LINES;

/** A line inside the piece: waist edge, stitching, levels, side, quarters, openings for cords, where to lengthen. */
export interface PieceLine {
  readonly name: LineName;
  readonly kind: LineKind;
  readonly curves: readonly Curve[];
}

/** A line with what it means. */
export const pieceLine = (name: LineName, curves: readonly Curve[]): PieceLine => ({
  name,
  kind: LINES[name].kind,
  curves,
});

/** The folds: of a leg's turnings, of a pocket's opening, and along a straight piece. */
export type FoldName = 'waistFold' | 'hemFold' | 'turnUnderFold' | 'pocketFold' | `${StraightKind}Fold`;

const FOLD_KEYS: Readonly<Record<FoldName, string>> = {
  waistFold: 'waist fold',
  hemFold: 'hem fold',
  turnUnderFold: 'turn-under fold',
  casingFold: 'casing fold',
  waistBandFold: 'waist band fold',
  hemBandFold: 'hem band fold',
  cuffFold: 'cuff fold',
  pocketFold: 'pocket fold',
  waistCordFold: 'waist cord fold',
  hemCordFold: 'hem cord fold',
};

/** By which programs find a line or a fold in the report and in drawings, whatever language people read. */
export const drawnKey = (name: LineName | FoldName): string =>
  name in LINES ? LINES[name as LineName].key : FOLD_KEYS[name as FoldName];

/** The lines right across a leg at a level of the body. */
export type LevelName = 'hip' | 'crotchLine' | 'knee';

const LEVEL_NAMES: Readonly<Record<LevelName, Phrase>> = {
  hip: say`hip`,
  crotchLine: say`crotch line`,
  knee: say`knee`,
};

/** What people call a level. */
export const levelName = (level: LevelName): Phrase => LEVEL_NAMES[level];

/** Whether a line is such a level. */
export const isLevel = (line: PieceLine): line is PieceLine & { readonly name: LevelName } => line.name in LEVEL_NAMES;
