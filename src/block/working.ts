import type { Body } from '../body';
import { mm, number, type Phrase, say } from '../length';
import { type Edge, outlineEdge, pathEnd, pathLength, pathThrough, type WorkingStep } from '../plane';
import type { DraftedBlocks } from './draft';
import { ABDOMEN, EXTENSION, KNEE_EASE } from './figures';
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
  return [
    step(
      'crotch-line',
      say`The crotch line lies ${mm(p.crotchLevel)} below the waist: the body rise and room to sit.`,
      say`body rise ${mm(body.bodyRise)} + ease ${mm(p.riseEase)}${fitPart(p.crotchLevel - body.bodyRise - p.riseEase)}`,
      level('crotch line', p.crotchLevel),
    ),
    step(
      'hip-line',
      p.hipRaised > 0.05
        ? say`The hip line is drawn ${mm(p.hipLevel)} below the waist, ${mm(p.hipRaised)} higher than measured: the back curve needs the room, and below the line the leg only gets wider.`
        : say`The hip line lies ${mm(p.hipLevel)} below the waist, where the seat is fullest.`,
      [],
      level('hip', p.hipLevel),
    ),
    step(
      'widths',
      say`At the hip the front is ${mm(p.frontWidth)} wide and the back ${mm(p.backWidth)}; together, twice, that is the fullest girth and ${mm(options.hipEase)} of ease.`,
      say`a quarter of hip + ease, ${mm(quarter)}, less ${mm(options.balance * p.k)} in front and as much more behind${abdomenPart(p.abdomen)}`,
      [
        { name: 'front width', curves: pathThrough({ x: 0, y: p.hipLevel }, { x: p.frontWidth, y: p.hipLevel }) },
        { name: 'back width', curves: pathThrough({ x: 0, y: p.hipLevel }, { x: -p.backWidth, y: p.hipLevel }) },
      ],
    ),
    step(
      'extensions',
      say`Between the legs the front is extended by ${mm(p.extensionFront)}, the back by ${mm(p.extensionBack)}.`,
      say`${number(EXTENSION.front)} of the front’s ${mm(p.frontWidth - ABDOMEN.front * p.abdomen)} and ${number(EXTENSION.back)} of the back’s ${mm(p.backWidth - ABDOMEN.back * p.abdomen)}${Math.abs(blocks.crotchFit) < 0.005 ? [] : say`, moved by ${number(blocks.crotchFit)} of the way that the crotch fit allows`}`,
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
      say`At centre back the waist rises ${mm(p.backRaise)}, so that it stays up when sitting; at centre front it ${p.frontDrop >= 0 ? 'drops' : 'rises'} ${mm(Math.abs(p.frontDrop))}.`,
      [],
      both('waist'),
    ),
    step(
      'shaping',
      say`What the waist is smaller than the hip is shared out: centre back leans ${mm(p.leanBack)}, centre front ${mm(p.leanFront)}, each side takes ${mm(p.side)}, darts the rest.`,
      p.shapingLeft > 0.05 ? say`${mm(p.shapingLeft)} found no place and stay in the waist.` : [],
      [...both('centre'), ...both('side'), ...darts(front), ...darts(back)],
    ),
    step(
      'crotch-curves',
      say`Each crotch curve leaves its centre line without a corner and meets its own inseam squarely, so that the two run on smoothly when sewn.`,
      [],
      both('crotch'),
    ),
    ...fitStep(blocks, both('crotch'), step),
    step(
      'knee',
      say`The knee line lies ${mm(p.kneeLevel)} below the waist; the block is ${mm(p.kneeFront + p.kneeBack + letOut)} round there, ${mm(p.hemFront + p.hemBack + letOut)} at the ankle.${letOutPart(letOut)}`,
      say`knee ${mm(body.kneeGirth)} + ${mm(KNEE_EASE * p.k)}${letOut < TOLD ? [] : say` + ${mm(letOut)}`}`,
      level('knee', p.kneeLevel),
    ),
    step(
      'inseams',
      say`The back crotch point is dropped by ${mm(blocks.backCrotchDrop)}, so that both inseams are equally long.`,
      [],
      both('inseam'),
    ),
  ];
}

const named = (block: Block, name: BlockEdge): Edge => ({
  name: `${block.part} ${name}`,
  curves: outlineEdge(block.edges, name).curves,
});

/** Less isn't told: nobody could draw it (tolerance). */
const TOLD = 0.05;

/** How far the knee was let out at the inseam, so that the crotch curve arrives nearly level. */
function kneeLetOut(block: Block, p: Proportions): number {
  const [crease, knee] = block.part === 'front' ? [p.creaseFront, p.kneeFront] : [p.creaseBack, p.kneeBack];
  const inseam = outlineEdge(block.edges, 'inseam').curves;
  return Math.abs(pathEnd(inseam.slice(0, 1)).x) - (crease + knee / 2);
}

const letOutPart = (letOut: number): Phrase =>
  letOut < TOLD
    ? []
    : say` For a full thigh over a near knee the inseams are let out by ${mm(letOut)}, or the crotch would end in a hook.`;

const darts = (block: Block): readonly Edge[] =>
  block.darts.map((dart, i) => ({
    name: `${block.part} dart ${i + 1}`,
    curves: pathThrough(dart.left, dart.tip, dart.right),
  }));

const fitPart = (fit: number): Phrase =>
  Math.abs(fit) < 0.05 ? [] : say` ${fit > 0 ? '+' : '−'} crotch fit ${mm(Math.abs(fit))}`;

const abdomenPart = (abdomen: number): Phrase =>
  abdomen > 0
    ? say`; the abdomen’s ${mm(abdomen)} over the hip go mostly to the front (${number(ABDOMEN.front)} and ${number(ABDOMEN.back)} of them)`
    : [];

function fitStep(
  { crotchWanted: wanted, crotchRest: rest, crotchFit: fit }: Blocks,
  lines: readonly Edge[],
  step: (id: string, sentence: Phrase, formula: Phrase, lines: readonly Edge[]) => WorkingStep,
): readonly WorkingStep[] {
  if (wanted === undefined) return [];
  const sentence =
    Math.abs(rest) < 5
      ? say`Depth, extensions and raise were moved until the crotch length came to ${mm(wanted + rest)}; the finished leg then measures ${mm(wanted)}, the measured length and its ease.`
      : say`The wanted crotch length of ${mm(wanted)} is missed by ${mm(rest)}, although depth, extensions and raise were moved as far as they go: measure rise and crotch length again.`;
  return [step('crotch-fit', sentence, say`moved by ${number(fit)} of the way that is allowed`, lines)];
}

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
      formula: [],
      lines: [...all(front), ...all(back)],
    },
    {
      id: 'blocks.brought-inseams',
      station: 'blocks',
      sentence: say`Their inseams are ${mm(inseam(front))} and ${mm(inseam(back))} long; the back crotch point lies ${mm(backCrotchDrop)} below the front’s.`,
      formula: [],
      lines: [named(front, 'inseam'), named(back, 'inseam')],
    },
  ];
}
