import type { Body } from '../body';
import { type Edge, outlineEdge, pathEnd, pathLength, pathThrough, type WorkingStep } from '../plane';
import { inTurn, mm, number, type Phrase, part, rounding, say, UNSAID } from '../words';
import type { DraftedBlocks } from './draft';
import { ABDOMEN, FORK, KNEE_EASE } from './figures';
import type { BlockOptions, Proportions } from './proportions';
import type { Block, BlockEdge, Blocks } from './types';

/**
 * The drafting of the two blocks, step by step, in the order of work.
 *
 * @param drafted the blocks and their proportions
 * @param body the body
 * @param options eases and balance
 */
export function blockWorking(
  { blocks, proportions: p }: DraftedBlocks,
  body: Body,
  options: BlockOptions,
): readonly WorkingStep[] {
  const { front, back } = blocks;
  const level = (name: string, y: number): readonly Edge[] => [
    {
      name,
      curves: pathThrough({ x: -(p.backWidth + p.extensionBack), y }, { x: p.frontWidth + p.extensionFront, y }),
    },
  ];
  const both = (name: BlockEdge): readonly Edge[] => [named(front, name), named(back, name)];
  const step = (id: string, sentence: Phrase, formula: Phrase, lines: readonly Edge[]): WorkingStep => ({
    id: `blocks.${id}`,
    station: 'blocks',
    sentence,
    formula,
    lines,
  });
  const letOut = kneeLetOut(front, p) + kneeLetOut(back, p);
  const quarter = (body.hipGirth + options.hipEase) / 4;
  const around = 2 * (p.frontWidth + p.backWidth);
  const tilt = p.backRaise + p.frontDrop;
  const knee = p.kneeFront + p.kneeBack + letOut;
  return [
    step(
      'crotch-line',
      say`The crotch line lies ${mm(p.crotchLevel)} below the waist: the body rise and room to sit.`,
      say`body rise ${part(body.bodyRise)} + ease ${part(p.riseEase - p.fitDepth)}${fitPart(p.fitDepth)}${rounding(p.crotchLevel, body.bodyRise, p.riseEase - p.fitDepth, fitTold(p.fitDepth))} = ${part(p.crotchLevel)}. Source: ${RISE_SOURCE}.`,
      level('crotch line', p.crotchLevel),
    ),
    step('hip-line', hipLineTold(p), UNSAID, level('hip', p.hipLevel)),
    step(
      'widths',
      say`At the hip the front is ${part(p.frontWidth)} wide and the back ${part(p.backWidth)}; two of each make the hip and some room: 2 × (${part(p.frontWidth)} + ${part(p.backWidth)})${rounding(around, { mm: p.frontWidth, times: 2 }, { mm: p.backWidth, times: 2 })} = ${part(around)} = ${part(body.hipGirth)} ${moreOrLess(around - body.hipGirth)}${rounding(around, body.hipGirth, around - body.hipGirth)}.`,
      say`a quarter of hip + ease, ${mm(quarter)}, less ${part(options.balance * p.k)} in front and as much more behind${abdomenPart(p)}`,
      [
        { name: 'front width', curves: pathThrough({ x: 0, y: p.hipLevel }, { x: p.frontWidth, y: p.hipLevel }) },
        { name: 'back width', curves: pathThrough({ x: 0, y: p.hipLevel }, { x: -p.backWidth, y: p.hipLevel }) },
      ],
    ),
    step(
      'extensions',
      say`Between the legs the front is extended by ${mm(p.extensionFront)}, the back by ${mm(p.extensionBack)}.`,
      say`${number(FORK.front.usual)} of ${mm(p.frontNet)} and ${number(FORK.back.usual)} of ${mm(p.backNet)}, the widths without a belly${forkFitPart(p)}. Source: ${FORK_SOURCE}.`,
      [
        {
          name: 'front extension',
          curves: pathThrough(
            { x: p.frontWidth, y: p.crotchLevel },
            { x: p.frontWidth + p.extensionFront, y: p.crotchLevel },
          ),
        },
        {
          name: 'back extension',
          curves: pathThrough(
            { x: -p.backWidth, y: p.crotchLevel },
            { x: -p.backWidth - p.extensionBack, y: p.crotchLevel },
          ),
        },
      ],
    ),
    step(
      'waist',
      p.frontDrop >= 0
        ? say`At centre back the waist rises ${part(p.backRaise)}, so that it stays up when sitting; at centre front it drops ${part(p.frontDrop)}. Centre back stands ${part(p.backRaise)} + ${part(p.frontDrop)}${rounding(tilt, p.backRaise, p.frontDrop)} = ${part(tilt)} above centre front.`
        : say`At centre back the waist rises ${part(p.backRaise)}, so that it stays up when sitting; at centre front it rises ${part(-p.frontDrop)}. Centre back stands ${part(p.backRaise)} − ${part(-p.frontDrop)}${rounding(tilt, p.backRaise, p.frontDrop)} = ${part(tilt)} above centre front.`,
      say`Source: ${WAIST_SOURCE}.`,
      both('waist'),
    ),
    step(
      'shaping',
      say`The difference between hip and waist is shared out: centre back leans ${mm(p.leanBack)}, each side takes ${mm(p.side)}, darts the rest. ${frontWords(p.leanOut)}`,
      p.shapingLeft > 0.05 ? say`${mm(p.shapingLeft)} can’t be taken in and stay in the waist.` : UNSAID,
      [...both('centre'), ...both('side'), ...darts(front), ...darts(back)],
    ),
    step(
      'crotch-curves',
      say`Each crotch curve leaves its centre line without a corner and meets its own inseam squarely, so that the two run on smoothly when sewn.`,
      UNSAID,
      both('crotch'),
    ),
    ...fitStep(blocks, p, both('crotch'), step),
    step(
      'knee',
      say`The knee line lies ${mm(p.kneeLevel)} below the waist; the block is ${mm(knee)} round there, ${mm(p.hemFront + p.hemBack + letOut)} at the ankle.${letOutPart(letOut)}`,
      say`knee ${part(body.kneeGirth)} + ${part(KNEE_EASE * p.k)}${letOut < TOLD ? UNSAID : say` + ${part(letOut)}`}${rounding(knee, body.kneeGirth, KNEE_EASE * p.k, letOut < TOLD ? 0 : letOut)} = ${part(knee)}`,
      level('knee', p.kneeLevel),
    ),
    step(
      'inseams',
      say`The back crotch point is dropped by ${mm(blocks.backCrotchDrop)}, so that both inseams are equally long.`,
      UNSAID,
      both('inseam'),
    ),
  ];
}

const RISE_SOURCE = say`New Mexico State University C-209, quoted: ½ to 1 in by the hip; 6 mm more to lounge in, practice`;
const FORK_SOURCE = say`The Practical Designer, 1911 and 1918: hip/16 to hip/12 in front; behind hip/8, practice; ANSUR II`;
const WAIST_SOURCE = say`The Practical Designer, 1918: ½ in in front; behind hip/24 on lesson slides; here less, practice; ANSUR II`;

const named = (block: Block, name: BlockEdge): Edge => ({
  name: `${block.part} ${name}`,
  curves: outlineEdge(block.edges, name).curves,
});

/** Less isn't told: nobody could draw it. @source tolerance */
const TOLD = 0.05;

/** How far the knee was let out at the inseam, so that the crotch curve arrives nearly level. */
function kneeLetOut(block: Block, p: Proportions): number {
  const [crease, knee] = block.part === 'front' ? [p.creaseFront, p.kneeFront] : [p.creaseBack, p.kneeBack];
  const inseam = outlineEdge(block.edges, 'inseam').curves;
  return Math.abs(pathEnd(inseam.slice(0, 1)).x) - (crease + knee / 2);
}

const letOutPart = (letOut: number): Phrase =>
  letOut < TOLD
    ? UNSAID
    : say` For a full thigh over a near knee the inseams are let out by ${mm(letOut)}, or the crotch would end in a hook.`;

const darts = (block: Block): readonly Edge[] =>
  block.darts.map((dart, i) => ({
    name: `${block.part} dart ${i + 1}`,
    curves: pathThrough(dart.left, dart.tip, dart.right),
  }));

const fitPart = (fit: number): Phrase =>
  fitTold(fit) === 0 ? UNSAID : fit > 0 ? say` + crotch fit ${part(fit)}` : say` − crotch fit ${part(-fit)}`;
const fitTold = (fit: number): number => (Math.abs(fit) < TOLD ? 0 : fit);

const moreOrLess = (by: number): Phrase => (by < 0 ? say`− ${part(-by)}` : say`+ ${part(by)}`);

/** Where the hip line lies, and why not where it was measured. */
function hipLineTold({ hipLevel, hipRaised }: Proportions): Phrase {
  if (hipRaised > TOLD)
    return say`The hip line is drawn ${mm(hipLevel)} below the waist, ${mm(hipRaised)} higher than measured, to stay clear of the crotch line and of the waist.`;
  if (hipRaised < -TOLD)
    return say`The hip line is drawn ${mm(hipLevel)} below the waist, ${mm(-hipRaised)} lower than measured, to stay clear of the crotch line and of the waist.`;
  return say`The hip line lies ${mm(hipLevel)} below the waist, where the seat is fullest.`;
}

const frontWords = (leanOut: number): Phrase =>
  leanOut < TOLD
    ? say`Centre front stands upright.`
    : say`Centre front leans outwards by ${mm(leanOut)}, over the belly.`;

const abdomenPart = ({ abdomen, abdomenWidened: widened }: Proportions): Phrase =>
  widened < TOLD
    ? UNSAID
    : say`; the belly is ${mm(abdomen)} fuller than the hip, and where centre front’s lean and the usual spread don’t make enough room each leg is widened, here by ${mm(widened)}: ${number(ABDOMEN.front)} of it to the front, ${number(ABDOMEN.back)} to the back`;

/** What a measured crotch length made of the forks; nothing where it left them as they were. */
function forkFitPart(p: Proportions): Phrase {
  const by = [p.extensionFront - FORK.front.usual * p.frontNet, p.extensionBack - FORK.back.usual * p.backNet];
  const [front = 0, back = 0] = by;
  if (Math.abs(front) < TOLD && Math.abs(back) < TOLD) return UNSAID;
  return say`; the crotch fit moved them by ${mm(front)} and ${mm(back)}`;
}

/** The three stages of the fit, as far as they were gone. */
function stagesGone(fit: number, p: Proportions): Phrase {
  const raise = mm(Math.abs(p.backRaise - p.usualRaise));
  const depth = mm(Math.abs(p.fitDepth));
  const stages =
    fit > 0
      ? [say`the waist up (centre back by ${raise})`, say`the crotch line down by ${depth}`, say`longer forks`]
      : [say`the waist down (centre back by ${raise})`, say`the crotch line up by ${depth}`, say`shorter forks`];
  const [first = UNSAID, ...then] = stages.slice(0, Math.ceil(Math.abs(fit)));
  return inTurn([first, ...then.map((one) => say`then ${one}`)], ', ');
}

function fitStep(
  { crotchWanted: wanted, crotchRest: rest, frontCrotchRest: frontRest, crotchFit: fit }: Blocks,
  p: Proportions,
  lines: readonly Edge[],
  step: (id: string, sentence: Phrase, formula: Phrase, lines: readonly Edge[]) => WorkingStep,
): readonly WorkingStep[] {
  if (wanted === undefined) return [];
  const reached =
    Math.abs(rest) < MISSED
      ? say`The crotch was fitted until the finished leg measures ${mm(wanted + rest)}, the measured length and its ease.`
      : say`The wanted crotch length of ${mm(wanted)} is missed by ${mm(rest)}, although raise, depth and forks were moved as far as a cutter would: measure rise and crotch length again.`;
  const front =
    Math.abs(frontRest) < MISSED ? UNSAID : say`Its front part comes out ${mm(frontRest)} off what was measured.`;
  const formula = Math.abs(fit) < 0.005 ? say`nothing had to be moved` : say`moved: ${stagesGone(fit, p)}`;
  return [step('crotch-fit', inTurn([reached, front]), formula, lines)];
}

/** A crotch length that is missed by less is reached: a tape reads no finer. @source tolerance */
const MISSED = 5;

/**
 * What is said about blocks that were brought along.
 *
 * @param blocks the pair
 */
export function tracedWorking({
  front,
  back,
  extensionFront,
  extensionBack,
  backCrotchDrop,
}: Blocks): readonly WorkingStep[] {
  const all = (block: Block): readonly Edge[] => block.edges.map((edge) => named(block, edge.name));
  const inseam = (block: Block) => pathLength(outlineEdge(block.edges, 'inseam').curves);
  return [
    {
      id: 'blocks.brought',
      station: 'blocks',
      sentence: say`The blocks are your own: the crotch lies ${mm(front.crotchLevel)} below the waist at the side, extended by ${mm(extensionFront)} in front and ${mm(extensionBack)} behind.`,
      formula: UNSAID,
      lines: [...all(front), ...all(back)],
    },
    {
      id: 'blocks.brought-inseams',
      station: 'blocks',
      sentence: say`Their inseams are ${mm(inseam(front))} and ${mm(inseam(back))} long; the back crotch point lies ${mm(backCrotchDrop)} below the front’s.`,
      formula: UNSAID,
      lines: [named(front, 'inseam'), named(back, 'inseam')],
    },
  ];
}
