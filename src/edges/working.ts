import type { Edge, WorkingStep } from '../plane';
import { mm, number, type Phrase, part, rounding, say, UNSAID } from '../words';
import { BAND_SHARE, BETWEEN_ROWS, CORD_ROOM, ELASTIC_LAP, ELASTIC_SHARE, MOST_DRAWN_IN, TIE } from './casing';
import { type EdgeName, isTurning } from './edge-names';
import type { EdgeChoices, FinishedLeg } from './finish';
import { LIMB_ROOM } from './hem';
import type { FoldName, LineName } from './line-names';
import { CORD_FROM_CENTRE } from './lines';
import { HEM_TIE, type Notions } from './notions';
import { USABLE_STRETCH } from './stretch';

/** How the leg got its edges, step by step, in the order of work. */
export function edgesWorking(
  finished: FinishedLeg,
  choices: EdgeChoices,
  notions: Notions,
  waistGirth: number,
): readonly WorkingStep[] {
  const { piece, heights, hemPlan } = finished;
  const { pieced } = finished.cut;
  const step = (id: string, [sentence, formula]: Told, lines: readonly Edge[]): WorkingStep => ({
    id: `edges.${id}`,
    station: 'edges',
    sentence,
    formula,
    lines,
  });
  const edges = (...names: readonly (EdgeName | LineName | FoldName)[]) =>
    [...piece.stitchLine, ...piece.folds, ...piece.lines].filter((edge) => names.includes(edge.name));
  const { waist, allowances } = choices;
  const steps: (WorkingStep | false)[] = [
    step('casing', waistTold(finished, choices), edges('waistEdge', 'waistFold', 'waist', 'channelStitching')),
    heights.catch > 0 &&
      step(
        'catch',
        [
          waist.rawEdge === 'overlocked'
            ? say`${mm(heights.catch)} more lie beyond the stitching, so that the overlocked or zigzagged edge is caught.`
            : say`${mm(heights.catch)} more lie beyond the stitching, so that the edge turned under is caught.`,
          UNSAID,
        ],
        edges('waist', 'casingStitching'),
      ),
    (heights.kind === 'folded' || hemPlan.kind === 'folded') &&
      step(
        'mirror',
        [say`Beyond its fold a turning mirrors the leg on this side of it: turned over, it lies flat.`, UNSAID],
        [...piece.stitchLine.filter(({ name }) => isTurning(name)), ...edges('waistFold', 'hemFold')],
      ),
    notions.elasticLength !== undefined &&
      step(
        'elastic',
        [
          say`Cut the elastic ${mm(notions.elasticLength)} long: it holds, and it never is longer than the opening.`,
          elasticFormula(choices, waistGirth),
        ],
        edges('quarter'),
      ),
    notions.cordLength !== undefined &&
      step(
        'cord',
        [
          say`The cord comes out ${mm(CORD_FROM_CENTRE)} to each side of centre front, through the outer layer, reinforced; it is ${mm(notions.cordLength)} long.`,
          waist.cordLength === 'auto' ? say`the opening and two ends of ${mm(TIE)} to tie` : say`as chosen`,
        ],
        edges('cordOpening'),
      ),
    step(
      'hem',
      hemTold(finished, choices, notions),
      edges('hemFold', 'hemStitching', 'turnUnderFold', 'hem', 'hemCordOpening', 'hemQuarter'),
    ),
    step(
      'allowances',
      [
        say`The cut line runs parallel to the stitching line: ${mm(allowances.inseam)} at the inseams, ${mm(allowances.crotch)} at the crotch seam. At the crotch point both go on straight until they meet; at folds they mirror; raw edges have none.`,
        UNSAID,
      ],
      piece.cutLine,
    ),
    pieced !== undefined &&
      step(
        'fork-tip',
        [
          say`The tip of the back fork is cut off along the grain, ${mm(choices.piecedTip)} inside the crotch point, and sewn on again before anything else: the legs lie closer on the cloth by that much. Both sides of the seam bear ${mm(allowances.inseam)}; at its ends the tip’s allowance mirrors inseam and crotch edge, so that raw edges meet.`,
          UNSAID,
        ],
        pieced.leg.stitchLine.filter(({ name }) => name === 'piecing'),
      ),
    step(
      'marks',
      [
        say`One notch in front and two behind where the crotch curve begins; single notches on the inseams at equal lengths from the crotch, so that they meet. The quarter of the waist lies halfway between the centre seams, apart from the side.`,
        UNSAID,
      ],
      edges('quarter', 'side'),
    ),
  ];
  return steps.filter((one) => one !== false);
}

/** By which rule the elastic is cut. */
const elasticFormula = ({ waist }: EdgeChoices, waistGirth: number): Phrase =>
  waist.elasticLength === 'auto'
    ? say`the larger of ${number(ELASTIC_SHARE)} × waist ${mm(waistGirth)} and waist − ${mm(MOST_DRAWN_IN)}, + ${mm(ELASTIC_LAP)} lap; never more than the opening`
    : say`as chosen; never more than the opening`;

/** A sentence, and the formula behind it. */
type Told = readonly [Phrase, Phrase];

/** What is built at the waist, and by which rule. */
function waistTold({ heights, casing }: FinishedLeg, { waist }: EdgeChoices): Told {
  const elastic =
    waist.rows > 1
      ? say`2 × ${number(waist.rows)} rows × ${part(waist.elasticWidth)} + ${part(waist.turnOfCloth)} for the turn + ${number(waist.rows - 1)} × ${part(BETWEEN_ROWS)} between the rows`
      : say`2 × ${part(waist.elasticWidth)} + ${part(waist.turnOfCloth)}`;
  const elasticTerms = [
    { mm: waist.elasticWidth, times: 2 * waist.rows },
    { mm: waist.turnOfCloth },
    { mm: BETWEEN_ROWS, times: waist.rows - 1 },
  ];
  const cord = say`2 × (cord ${part(waist.cordWidth)} + ${part(CORD_ROOM)} of room)`;
  const cordTerms = [
    { mm: waist.cordWidth, times: 2 },
    { mm: CORD_ROOM, times: 2 },
  ];
  const { height } = heights;
  const elasticSum = say`${elastic}${rounding(height, ...elasticTerms)} = ${part(height)}`;
  const built = say`The casing is built ${mm(heights.height)} above the waist edge`;
  const halfway = say`It folds halfway: 2 × ${part(heights.fold)}${rounding(height, { mm: heights.fold, times: 2 })} = ${part(height)}.`;
  const edge = 2 * Math.abs(casing.waistEdge[1].x - casing.waistEdge[0].x);
  switch (waist.finish) {
    case 'elasticCasing':
      return [say`${built}: twice the elastic and the turn of the cloth. ${halfway}`, elasticSum];
    case 'drawstringCasing':
      return [
        say`${built}, so that the cord runs with room. ${halfway}`,
        say`${cord} + ${part(waist.turnOfCloth)}${rounding(height, ...cordTerms, waist.turnOfCloth)} = ${part(height)}`,
      ];
    case 'elasticAndDrawstring':
      return [
        say`${built}: the elastic below, the cord in a channel of its own above it. ${halfway}`,
        say`${elastic} + ${cord}${rounding(height, ...elasticTerms, ...cordTerms)} = ${part(height)}`,
      ];
    case 'separateCasing':
      return [
        say`The casing is a straight piece of its own, ${mm(heights.height)} high before it is folded, and about ${mm(edge)} long: the waist edge all round.`,
        elasticSum,
      ];
    case 'knitBand':
      return [
        say`A band of knit, ${mm(waist.bandHeight)} high when folded, is sewn to the waist edge, stretched to it.`,
        say`the larger of ${number(BAND_SHARE)} × waist and fullest part ÷ (1 + ${number(USABLE_STRETCH)} × ${number(waist.bandStretch)})`,
      ];
    case 'facedCasing':
      return [
        say`The leg ends ${mm(heights.fold)} above the waist edge; a facing of the leg’s own shape is sewn on there and turned inside, so that the casing lies flat at any lean.`,
        say`half of ${elasticSum}`,
      ];
  }
}

/** What is done at the hem. */
function hemTold({ hemPlan }: FinishedLeg, { hem }: EdgeChoices, notions: Notions): Told {
  const under =
    hem.turnUnder > 0 ? say`, with ${mm(hem.turnUnder)} turned under` : say`, its edge overlocked or zigzagged`;
  switch (hem.finish) {
    case 'turned':
      return [say`The hem is turned up ${mm(hem.depth)}${under}.`, UNSAID];
    case 'elasticCasing':
      return [
        say`The hem is a casing ${mm(hemPlan.depth)} deep; cut its elastic ${mm(notions.hemElasticLength ?? 0)} long.`,
        say`elastic ${mm(hem.elasticWidth)} and room; the leg where it ends, ${mm(LIMB_ROOM)} of room and ${mm(ELASTIC_LAP)} lap`,
      ];
    case 'drawstringCasing':
      return [
        say`The hem is a casing ${mm(hemPlan.depth)} deep with its opening at the side; its cord is ${mm(notions.hemCordLength ?? 0)} long.`,
        hem.cordLength === 'auto'
          ? say`cord ${mm(hem.cordWidth)} + ${mm(CORD_ROOM)} of room; its length: the hem once round and two ends of ${mm(HEM_TIE)} to tie`
          : say`cord ${mm(hem.cordWidth)} + ${mm(CORD_ROOM)} of room; its length: as chosen`,
      ];
    case 'contrastBand':
      return [
        say`A doubled band, ${mm(hem.bandHeight)} high, is sewn to the leg, which ends that much higher.`,
        UNSAID,
      ];
    case 'ribCuff':
      return [
        say`A cuff of rib, ${mm(hem.bandHeight)} high, is sewn to the leg, which ends that much higher; it stretches enough to be pulled on.`,
        say`the larger of the leg where it ends + ${mm(LIMB_ROOM)} and the fullest of foot and calf below ÷ (1 + ${number(USABLE_STRETCH)} × ${number(hem.ribStretch)})`,
      ];
    case 'facedHem':
      return [
        say`A facing of the leg’s own shape, ${mm(hem.depth)} deep, is sewn to the hem and turned inside${under}.`,
        UNSAID,
      ];
  }
}
