import { cutCurves, type EdgeName, type FoldName, type LineName, type Piece, type PieceKind } from '../edges';
import { type Curve, straight } from '../plane';
import { drawnCurves } from './measuring';

/** What there is of a place on one finished piece; nothing on most. */
type Place = (piece: Piece) => readonly Curve[];

const only =
  (kinds: readonly PieceKind[], place: Place): Place =>
  (piece) =>
    kinds.includes(piece.kind) ? place(piece) : [];

/** Edges, lines and folds of a leg, and of the tip that is pieced to it. */
const along = (...names: readonly (EdgeName | LineName | FoldName)[]): Place =>
  only(['leg', 'forkTip'], (piece) => names.flatMap((name) => drawnCurves(piece, name) ?? []));

/** The first of these that a leg has. */
const either = (...names: readonly (EdgeName | LineName | FoldName)[]): Place =>
  only(['leg'], (piece) => {
    const name = names.find((one) => drawnCurves(piece, one));
    return name ? (drawnCurves(piece, name) ?? []) : [];
  });

const both =
  (...places: readonly Place[]): Place =>
  (piece) =>
    places.flatMap((place) => place(piece));

const wholeCut: Place = cutCurves;
const waist = either('waistEdge', 'waist');
const hem = either('hemFold', 'hem');
const inseams = along('inseamFront', 'inseamBack');
const crotch = along('crotchFront', 'crotchBack');
const centres = along('centreFront', 'centreBack');
const turnings = both(either('waistFold', 'waist'), hem, along('turnUnderFold'));
const grain: Place = only(['leg'], ({ grainline: [top, bottom] }) => [straight(top, bottom)]);
/** The ticks as they are drawn, across the allowance. */
const notches: Place = only(['leg', 'forkTip'], (piece) =>
  piece.notches.map(({ at, outward, length }) =>
    straight(at, { x: at.x + outward.x * length, y: at.y + outward.y * length }),
  ),
);

/** Where each check looks, by its id. */
const PLACES: Readonly<Record<string, Place>> = {
  'pull-on': waist,
  'elastic-reaches': waist,
  'waist-cord': waist,
  'hem-cord': hem,
  'hem-entry': hem,
  'thigh-ease': along('crotchLine'),
  'knee-ease': either('knee', 'hemFold', 'hem'),
  'limb-ease': hem,
  'hip-ease': along('hip'),
  'hip-line': along('hip'),
  'rise-ease': along('crotchLine'),
  'crotch-length': both(centres, crotch),
  'leg-fits-cloth': only(['leg'], wholeCut),
  'cut-line-simple': wholeCut,
  'stitching-line': (piece) => piece.stitchLine.flatMap(({ curves }) => curves),
  'inseams-equal': inseams,
  'legs-meet': both(inseams, crotch),
  'notches-meet': notches,
  'crotch-smooth': crotch,
  'centres-smooth': both(centres, crotch),
  'waist-smooth': both(waist, centres),
  'hem-smooth': hem,
  'turnings-flat': turnings,
  channels: along('waistEdge', 'casingStitching', 'channelStitching', 'waistFold', 'hemFold', 'hemStitching'),
  'allowances-uniform': wholeCut,
  'pieced-tip': along('piecing'),
  numbers: (piece) => piece.stitchLine.flatMap(({ curves }) => curves),
  'traced-parts': crotch,
  'traced-grains': grain,
  'traced-hips': along('hip', 'side'),
  'traced-inseams': inseams,
  leans: centres,
  tilt: waist,
  fork: crotch,
  'inseams-slant': inseams,
  'crotch-ends': crotch,
  fullness: waist,
  measured: along('hip', 'waistEdge'),
};

/**
 * Where a check looks on a finished piece: the curves of the edges, lines and folds that it measures, to be lit on a
 * drawing.
 *
 * @param id of the check
 * @param piece any piece of the pattern
 * @returns nothing where the piece has no part in it, or nobody knows the check
 */
export const checkPlace = (id: string, piece: Piece): readonly Curve[] => PLACES[id]?.(piece) ?? [];
