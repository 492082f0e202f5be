import { type Phrase, say, UNSAID } from '../../words';
import type { FIELDS, ROOT_FIELDS } from './fields';

type SentencesOf<Group> = { readonly [Key in keyof Group]: Phrase };

/**
 * What each field moves, in a sentence, for the help, the documentation and other programs. It stands beside the catalogue and
 * not in it, so that the page needn't load it before the help is asked for; a field without a sentence doesn't compile.
 */
const ROOT_SENTENCES: SentencesOf<typeof ROOT_FIELDS> = {
  name: say`Names the files, and stands on the pattern and its pages.`,
  units: say`How lengths are shown and typed; the file itself holds millimetres.`,
};

const SIDE: SentencesOf<(typeof FIELDS)['sides.left']> = {
  fullerHip: say`Widens this leg alone from the waist to the crotch: half in front, half behind.`,
  fullerSeat: say`Widens the back of this leg alone.`,
  higherHip: say`Raises the waist edge of this leg alone over the side, and not at the centres.`,
  longerLeg: say`Lengthens both inseams of this leg alone.`,
};

const SENTENCES: { readonly [Group in keyof typeof FIELDS]: SentencesOf<(typeof FIELDS)[Group]> } = {
  use: { forSleeping: say`The cautions about nightwear and fire are there unless it is false.` },
  block: {
    source: say`Whether the two blocks are drafted from the measurements or were brought along.`,
    hipEase: say`Room round the hip, beyond the body.`,
    waistEase: say`Room round the waist of the blocks, beyond the body.`,
    riseEase: say`How far the crotch line hangs below the body.`,
    crotchEase: say`How much longer the seam between the legs is than the body’s crotch length.`,
    balance: say`How much wider the back is than the front at the hip, as half of the difference.`,
  },
  cloth: {
    kind: say`Whether the cloth is woven or knit: a knit gives way where a woven needs room.`,
    stretch: say`How much longer a strip of the knit gets when it is pulled, as a share of its length.`,
    washFirst: say`Whether the cloth is washed before it is cut; if not, the pieces are drawn larger by what it will shrink.`,
    width: say`From selvedge to selvedge, as it is bought.`,
    oneWay: say`Whether all pieces must lie the same way up: for nap, and prints that have an upper end.`,
    shrinkLength: say`What the first wash takes of its length, as a share.`,
    shrinkWidth: say`What the first wash takes of its width, as a share.`,
    repeat: say`Of a check or a print, along the grain; 0 where nothing is matched.`,
    repeatAcross: say`Of stripes or a check, from selvedge to selvedge; 0 where nothing is matched.`,
    grainTolerance: say`Degrees by which a piece may lie off the grain.`,
    layout: say`How the cloth lies on the table when the pieces are cut.`,
    piecedTip: say`How far inside the back crotch point the fork’s tip is cut off along the grain and sewn on again, so that the legs lie closer; 0 leaves the leg whole.`,
  },
  leg: {
    spread: say`Opens the join between the blocks: the leg grows by it from the hip down, and the pair twice as much.`,
    straighten: say`How upright the centre seams stand above the hip: 0 as the blocks lean, 1 upright.`,
    raiseWaist: say`Moves the waist edge up, or down where it is negative.`,
    lowerCrotch: say`Moves the crotch line down.`,
    length: say`Where the leg ends: by a name, or by its finished inseam.`,
    shape: say`How the leg runs down to the hem: by a name, or to a finished hem.`,
  },
  waist: {
    finish: say`How the waist is finished.`,
    elasticWidth: say`Of the elastic, lying flat; the casing is built to it.`,
    rows: say`How many elastics lie above each other, each in a channel of its own.`,
    turnOfCloth: say`What the fold of the casing itself takes up; more in a thick cloth.`,
    elastic: say`Whether the elastic is drawn through the finished casing or sewn to its raw edge.`,
    rawEdge: say`How the casing’s raw edge is kept from fraying.`,
    elasticLength: say`How long to cut the elastic, its lap included.`,
    elasticStretch: say`How much longer the elastic gets when it is pulled out, as a share of its length.`,
    cordWidth: say`Of the cord; its channel is built to it.`,
    cordLength: say`How long to cut the cord, both ends to tie included.`,
    cord: say`Whether the cord is bought or sewn from the cloth.`,
    bandHeight: say`Of a knit band when it is folded.`,
    bandStretch: say`How much longer the band’s knit gets when it is pulled, as a share of its length.`,
  },
  hem: {
    finish: say`How the hem is finished.`,
    depth: say`How deep a turned or a faced hem lies inside the leg.`,
    turnUnder: say`What is tucked in of a hem’s raw edge; 0 where that is overlocked or zigzagged.`,
    elasticWidth: say`Of the elastic in a hem, lying flat.`,
    cordWidth: say`Of the cord in a hem.`,
    cordLength: say`How long to cut the cord of each hem, both ends to tie included.`,
    cord: say`Whether the hem’s cords are bought or sewn from the cloth.`,
    bandHeight: say`Of a band or a cuff when it is finished; the leg ends that much higher.`,
    ribStretch: say`How much longer the cuff’s rib gets when it is pulled, as a share of its length.`,
  },
  allowances: {
    inseam: say`Between the stitching and the cut line along the inseams.`,
    crotch: say`Between the stitching and the cut line along the crotch seam and the centre seams.`,
    waist: say`Between the stitching and the cut line where something is sewn to the waist.`,
    hem: say`Between the stitching and the cut line where something is sewn to the hem.`,
  },
  pocket: {
    width: say`Of the finished pocket, across its opening.`,
    height: say`Of the finished pocket, from the opening down.`,
    facing: say`What is turned inside at the opening.`,
    part: say`Whether the pocket is sewn on in front or behind.`,
    count: say`One pocket, or one on each leg.`,
  },
  sewing: { machine: say`For which machine the steps are written.` },
  fit: {
    flatSeat: say`For folds below the seat: shortens the back rise and the back’s fork.`,
    fullSeat: say`For drags from the seat to the crotch: lengthens the back rise and the back’s fork.`,
    fullThigh: say`For drag lines that point at the crotch: lengthens both forks.`,
    swayBack: say`For a pool of cloth above the seat: lowers centre back at the waist.`,
    prominentAbdomen: say`For a waist that dips over the belly: raises centre front.`,
    sittingPull: say`For a waist that is pulled down behind when sitting: raises centre back.`,
    seated: say`For trousers that are worn sitting: lowers centre front and raises centre back by half of it, and lengthens the leg by as much.`,
    knockKnees: say`For drags at the inner knee: moves the inseams outwards at the knee; inwards where it is negative.`,
  },
  'sides.left': SIDE,
  'sides.right': SIDE,
  projector: {
    line: say`How wide the cut line of the projector’s file is drawn.`,
    ground: say`Whether light lines are thrown on a dark ground, or dark ones on light.`,
    test: say`Whether the projector’s test is 80 by 60 cm (32 by 24 in), or half of that for a small picture.`,
    across: say`The true length of the projected line A to B over what it measures on the table; “auto” where nobody measured it.`,
    down: say`The same for the line A to D; without both of these nothing is corrected.`,
    diagonalAC: say`The same for the diagonal A to C, which tells whether the picture is slanted.`,
    diagonalBD: say`The same for the diagonal B to D; with it the four lengths prove each other.`,
  },
  paper: {
    sheet: say`A size by its name, or “own”.`,
    orientation: say`Whether the sheets are printed portrait or landscape, or whichever takes fewer.`,
    margin: say`The strip round each sheet that is left white, because the printer can’t reach it.`,
    printerMargin: say`How near to the edges of the paper the printer prints, as its test page showed; “auto” where nobody looked.`,
    overlap: say`How far neighbouring sheets lie on each other; 0 where they are trimmed and butted.`,
    ownWidth: say`Across a sheet of your own size.`,
    ownHeight: say`Along a sheet of your own size.`,
    scale: say`1 is true size; below that it is a sample.`,
    allowances: say`Whether a sample’s seam allowances shrink with it or stay as wide as they are sewn.`,
    correctX: say`Makes up for a printer that prints too short or too long along the short side of its paper: the test bar’s length divided by what it measures.`,
    correctY: say`The same along the long side.`,
  },
};

/** What the field at a path moves. */
export function fieldSentence(path: string): Phrase {
  const [, group = path, key = ''] = /^(.+)\.(\w+)$/.exec(path) ?? [];
  const found: Readonly<Record<string, Readonly<Record<string, Phrase>>>> = SENTENCES;
  return (key === '' ? (ROOT_SENTENCES as Readonly<Record<string, Phrase>>)[group] : found[group]?.[key]) ?? UNSAID;
}
