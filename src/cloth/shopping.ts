import { type CasingChoices, type HemChoices, type Notions, pieceName } from '../edges';
import type { Mm } from '../length';
import { amount, inTurn, mm, number, type Phrase, say, UNSAID } from '../words';
import { LAYOUT_WORDS } from './layout-words';
import { NEEDLES, TWIN_NEEDLE } from './needles';
import type { ClothPlan } from './plan';
import type { LayAnswer } from './types';

/** One thing to buy, in words that print in either unit. */
export interface ShoppingItem {
  /** Stable, e.g. `waist-elastic`. */
  readonly id: string;
  readonly name: Phrase;
  readonly howMuch: Phrase;
  /** What to look for when choosing it; empty where there is nothing. */
  readonly note: Phrase;
}

/** What the list depends on. */
export interface ShoppingQuestion {
  readonly plan: ClothPlan;
  readonly cloth: { readonly kind: 'woven' | 'knit'; readonly washFirst: boolean };
  readonly waist: CasingChoices;
  readonly hem: HemChoices;
  readonly notions: Notions;
  /** Of all seams, casings and hems, once each. */
  readonly seams: Mm;
  /** Whether an overlocker stands beside the plain machine. */
  readonly overlocker: boolean;
  /** Whether a rule asks for a label on nightwear. */
  readonly nightwearLabel: boolean;
}

/** Thread of both sides of a lockstitch, for a length of seam, with starts and ends. @source practice */
const THREAD_OF_SEAM = 3;
/** Seams are sewn and their edges finished, or sewn twice. @source practice */
const SEWN = 2;
const REEL: Mm = 100_000;

/**
 * Everything to buy for these choices: cloths with their washing counted, elastic and cord by their cut lengths, and
 * what the sewing uses up.
 *
 * @source practice, for kinds of needle and thread
 */
export function shoppingList(question: ShoppingQuestion): readonly ShoppingItem[] {
  return [...cloths(question), ...elastics(question), ...cords(question), ...sewing(question)];
}

const item = (id: string, name: Phrase, howMuch: Phrase, note: Phrase = UNSAID): ShoppingItem => ({
  id,
  name,
  howMuch,
  note,
});

function cloths({ plan, cloth }: ShoppingQuestion): readonly ShoppingItem[] {
  const others = { contrast: say`Contrasting cloth`, knit: say`Knit for the band`, rib: say`Rib for the cuffs` };
  const wash = cloth.washFirst
    ? say`Wash and dry it before it is cut; its shrinkage is counted in.`
    : say`Not washed first: the pieces are drawn larger instead.`;
  return [
    item('cloth', cloth.kind === 'knit' ? say`Knit cloth` : say`Woven cloth`, toBuy(plan.answer), wash),
    ...plan.others.map(({ kind, answer, pieces }) =>
      item(`${kind}-cloth`, others[kind], toBuy(answer), say`For: ${inTurn(pieces.map(pieceName), ', ')}.`),
    ),
  ];
}

function toBuy(answer: LayAnswer): Phrase {
  if (answer.fits)
    return say`${amount(answer.lay.toBuy)}, ${mm(answer.lay.width)} wide, ${LAYOUT_WORDS[answer.lay.layout]}`;
  return say`none fits at ${mm(answer.width)}; ${answer.instead[0] ?? UNSAID}`;
}

/** Lost at the end of each length that is cut straight. @source practice */
const CUT_LOSS: Mm = 10;

const rowsOf = (count: number, length: Mm): Phrase =>
  count === 1
    ? say`${amount(length + CUT_LOSS)}: cut ${mm(length)}`
    : say`${amount(count * (length + CUT_LOSS))}: cut ${number(count)} × ${mm(length)}`;

function elastics({ notions, waist, hem }: ShoppingQuestion): readonly ShoppingItem[] {
  const try1 = say`Try it round the body before it is sewn: it must not dig in.`;
  return [
    ...(notions.elasticLength === undefined
      ? []
      : [
          item(
            'waist-elastic',
            say`Elastic, ${mm(waist.elasticWidth)} wide, waist`,
            rowsOf(waist.rows, notions.elasticLength),
            try1,
          ),
        ]),
    ...(notions.hemElasticLength === undefined
      ? []
      : [
          item(
            'hem-elastic',
            say`Elastic, ${mm(hem.elasticWidth)} wide, hems`,
            rowsOf(2, notions.hemElasticLength),
            try1,
          ),
        ]),
  ];
}

/** A square of interfacing behind the opening for a cord of that width. @source practice */
export const openingPatch = (cordWidth: Mm): Mm => Math.max(30, cordWidth + 20);

function cords({ notions, waist, hem }: ShoppingQuestion): readonly ShoppingItem[] {
  const { cordLength, hemCordLength } = notions;
  // Two ends leave the waist casing; at each hem they leave by one opening at the side.
  const patch = Math.max(
    cordLength === undefined ? 0 : openingPatch(waist.cordWidth),
    hemCordLength === undefined ? 0 : openingPatch(hem.cordWidth),
  );
  const openings = (cordLength === undefined ? 0 : 2) + (hemCordLength === undefined ? 0 : 2);
  return [
    ...(cordLength === undefined || waist.cord === 'ofCloth'
      ? []
      : [item('waist-cord', say`Cord or tape, ${mm(waist.cordWidth)} wide, waist`, rowsOf(1, cordLength))]),
    ...(hemCordLength === undefined || hem.cord === 'ofCloth'
      ? []
      : [item('hem-cord', say`Cord or tape, ${mm(hem.cordWidth)} wide, hems`, rowsOf(2, hemCordLength))]),
    ...(openings === 0
      ? []
      : [
          item(
            'openings',
            say`Iron-on interfacing, behind the openings`,
            say`${number(openings)} squares of ${mm(patch)}`,
            say`The cloth behind an opening for a cord tears unless it is held. For eyelets instead of buttonholes: ${number(openings)} of them, and the squares all the same.`,
          ),
        ]),
  ];
}

function sewing({ cloth, seams, overlocker, waist, nightwearLabel }: ShoppingQuestion): readonly ShoppingItem[] {
  const thread = THREAD_OF_SEAM * SEWN * seams;
  const reels = Math.ceil(thread / REEL);
  return [
    item(
      'thread',
      say`Thread, all-purpose polyester`,
      reels === 1
        ? say`${number(1)} reel of ${number(REEL / 1000)} m`
        : say`${number(reels)} reels of ${number(REEL / 1000)} m`,
      overlocker
        ? say`About ${number(Math.ceil(thread / 1000))} m is used. The overlocker takes its own cones.`
        : say`About ${number(Math.ceil(thread / 1000))} m is used.`,
    ),
    item(
      'needle',
      say`Machine needle`,
      say`${number(1)}: ${NEEDLES[cloth.kind]}`,
      inTurn([
        overlocker
          ? say`A new one, and new ones of its own kind for the overlocker; keep them and pins away from children.`
          : say`A new one; keep it and pins away from children.`,
        cloth.kind === 'knit' ? say`For stitching that shows: a ${TWIN_NEEDLE}, if your machine takes one.` : UNSAID,
      ]),
    ),
    ...(nightwearLabel
      ? [
          item(
            'nightwear-label',
            say`Label for nightwear`,
            say`one`,
            say`Required in some countries if you sell it; the cloth’s own label and the rules where you live decide.`,
          ),
        ]
      : waist.finish === 'drawstringCasing'
        ? []
        : [item('loop', say`Narrow tape, for a loop`, say`${mm(80)}`, say`A scrap will do.`)]),
    item('tools', say`At hand`, say`scissors, pins, a safety pin, chalk, a tape measure, thread for tacking, an iron`),
  ];
}
