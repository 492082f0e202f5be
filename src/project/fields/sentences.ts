import type { FIELDS, ROOT_FIELDS } from './fields';

type SentencesOf<Group> = { readonly [Key in keyof Group]: string };

/**
 * What each field moves, in a sentence, for the documentation and for other programs. It stands beside the catalogue and
 * not in it, so that the page needn't load it; a field without a sentence doesn't compile.
 */
const ROOT_SENTENCES: SentencesOf<typeof ROOT_FIELDS> = {
  name: 'Names the files, and stands on the pattern and its pages.',
  units: 'How lengths are shown and typed; the file itself holds millimetres.',
};

const SIDE: SentencesOf<(typeof FIELDS)['sides.left']> = {
  fullerHip: 'Widens this leg alone from the waist to the crotch: half in front, half behind.',
  fullerSeat: 'Widens the back of this leg alone.',
  higherHip: 'Raises the waist edge of this leg alone over the side, and not at the centres.',
  longerLeg: 'Lengthens both inseams of this leg alone.',
};

const SENTENCES: { readonly [Group in keyof typeof FIELDS]: SentencesOf<(typeof FIELDS)[Group]> } = {
  use: { forSleeping: 'The cautions about nightwear and fire are there unless it is false.' },
  block: {
    source: 'Whether the two blocks are drafted from the measurements or were brought along.',
    hipEase: 'Room round the hip, beyond the body.',
    waistEase: 'Room round the waist of the blocks, beyond the body.',
    riseEase: 'How far the crotch line hangs below the body.',
    crotchEase: 'How much longer the seam between the legs is than the body’s crotch length.',
    balance: 'How much wider the back is than the front at the hip, as half of the difference.',
  },
  cloth: {
    kind: 'Whether the cloth is woven or knit: a knit gives way where a woven needs room.',
    stretch: 'How much longer a strip of the knit gets when it is pulled, as a share of its length.',
    washFirst:
      'Whether the cloth is washed before it is cut; if not, the pieces are drawn larger by what it will shrink.',
    width: 'From selvedge to selvedge, as it is bought.',
    oneWay: 'Whether all pieces must lie the same way up: for nap, and prints that have an upper end.',
    shrinkLength: 'What the first wash takes of its length, as a share.',
    shrinkWidth: 'What the first wash takes of its width, as a share.',
    repeat: 'Of a check or a print, along the grain; 0 where nothing is matched.',
    repeatAcross: 'Of stripes or a check, from selvedge to selvedge; 0 where nothing is matched.',
    grainTolerance: 'Degrees by which a piece may lie off the grain.',
    layout: 'How the cloth lies on the table when the pieces are cut.',
    piecedTip:
      'How far inside the back crotch point the fork’s tip is cut off along the grain and sewn on again, so that the legs lie closer; 0 leaves the leg whole.',
  },
  leg: {
    spread: 'Opens the join between the blocks: the leg grows by it from the hip down, and the pair twice as much.',
    straighten: 'How upright the centre seams stand above the hip: 0 as the blocks lean, 1 upright.',
    raiseWaist: 'Moves the waist edge up, or down where it is negative.',
    lowerCrotch: 'Moves the crotch line down.',
    length: 'Where the leg ends: by a name, or by its finished inseam.',
    shape: 'How the leg runs down to the hem: by a name, or to a finished hem.',
  },
  waist: {
    finish: 'How the waist is finished.',
    elasticWidth: 'Of the elastic, lying flat; the casing is built to it.',
    rows: 'How many elastics lie above each other, each in a channel of its own.',
    turnOfCloth: 'What the fold of the casing itself takes up; more in a thick cloth.',
    elastic: 'Whether the elastic is drawn through the finished casing or sewn to its raw edge.',
    rawEdge: 'How the casing’s raw edge is kept from fraying.',
    elasticLength: 'How long to cut the elastic, its lap included.',
    elasticStretch: 'How much longer the elastic gets when it is pulled out, as a share of its length.',
    cordWidth: 'Of the cord; its channel is built to it.',
    cordLength: 'How long to cut the cord, both ends to tie included.',
    cord: 'Whether the cord is bought or sewn from the cloth.',
    bandHeight: 'Of a knit band when it is folded.',
    bandStretch: 'How much longer the band’s knit gets when it is pulled, as a share of its length.',
  },
  hem: {
    finish: 'How the hem is finished.',
    depth: 'How deep a turned or a faced hem lies inside the leg.',
    turnUnder: 'What is tucked in of a hem’s raw edge; 0 where that is overlocked.',
    elasticWidth: 'Of the elastic in a hem, lying flat.',
    cordWidth: 'Of the cord in a hem.',
    cordLength: 'How long to cut the cord of each hem, both ends to tie included.',
    cord: 'Whether the hem’s cords are bought or sewn from the cloth.',
    bandHeight: 'Of a band or a cuff when it is finished; the leg ends that much higher.',
    ribStretch: 'How much longer the cuff’s rib gets when it is pulled, as a share of its length.',
  },
  allowances: {
    inseam: 'Between the stitching and the cut line along the inseams.',
    crotch: 'Between the stitching and the cut line along the crotch seam and the centre seams.',
    waist: 'Between the stitching and the cut line where something is sewn to the waist.',
    hem: 'Between the stitching and the cut line where something is sewn to the hem.',
  },
  pocket: {
    width: 'Of the finished pocket, across its opening.',
    height: 'Of the finished pocket, from the opening down.',
    facing: 'What is turned inside at the opening.',
    part: 'Whether the pocket is sewn on in front or behind.',
    count: 'One pocket, or one on each leg.',
  },
  sewing: { machine: 'For which machine the steps are written.' },
  fit: {
    flatSeat: 'For folds below the seat: shortens the back rise and the back’s fork.',
    fullSeat: 'For drags from the seat to the crotch: lengthens the back rise and the back’s fork.',
    fullThigh: 'For drag lines that point at the crotch: lengthens both forks.',
    swayBack: 'For a pool of cloth above the seat: lowers centre back at the waist.',
    prominentAbdomen: 'For a waist that dips over the belly: raises centre front.',
    sittingPull: 'For a waist that is pulled down behind when sitting: raises centre back.',
    seated:
      'For trousers that are worn sitting: lowers centre front and raises centre back by half of it, and lengthens the leg by as much.',
    knockKnees: 'For drags at the inner knee: moves the inseams outwards at the knee; inwards where it is negative.',
  },
  'sides.left': SIDE,
  'sides.right': SIDE,
  projector: {
    line: 'How wide the cut line of the projector’s file is drawn.',
    ground: 'Whether light lines are thrown on a dark ground, or dark ones on light.',
  },
  paper: {
    sheet: 'A size by its name, or “own”.',
    orientation: 'Whether the sheets stand upright, lie across, or as takes fewer of them.',
    margin: 'The strip round each sheet that the printer can’t reach.',
    overlap: 'How far neighbouring sheets lie on each other; 0 where they are trimmed and butted.',
    ownWidth: 'Across a sheet of your own size.',
    ownHeight: 'Along a sheet of your own size.',
    scale: '1 is true size; below that it is a sample.',
    allowances: 'Whether a sample’s seam allowances shrink with it or stay as wide as they are sewn.',
    correctX:
      'By what the printer’s error is undone along the short side: the test bar’s length over what it measured.',
    correctY: 'By what the printer’s error is undone along the long side: the test bar’s length over what it measured.',
  },
};

/** What the field at a path moves. */
export function fieldSentence(path: string): string {
  const [, group = path, key = ''] = /^(.+)\.(\w+)$/.exec(path) ?? [];
  const found: Readonly<Record<string, Readonly<Record<string, string>>>> = SENTENCES;
  return (key === '' ? (ROOT_SENTENCES as Readonly<Record<string, string>>)[group] : found[group]?.[key]) ?? '';
}
