import { measuredOf, measurements, restsOn } from '../../body';
import type { Check } from '../../check';
import { isLeg, pieceName } from '../../edges';
import { centreStands, LENGTH_NAMES } from '../../leg';
import { formatLength, type Mm, plain, type Units } from '../../length';
import {
  type Draft,
  fieldName,
  hemEnds,
  hemOf,
  type Measures,
  measureTold,
  notionsToBuy,
  type Project,
  sheetsOf,
} from '../../project';
import { CAUTIONS_NOTE, type Caution } from '../../sewing';
import { controlLengths } from '../../sheets';
import {
  inside,
  inTurn,
  isSaid,
  mm,
  number,
  own,
  type Phrase,
  printPhrase,
  said,
  say,
  UNSAID,
  words,
} from '../../words';

/** A name and its value, for a list. */
export interface Row {
  readonly name: string;
  readonly value: string;
}

/** The body's measurements in the order of the catalogue: those that were given, and estimates that the drawing rests on. */
export function bodyRows({ body, project }: Pick<Draft, 'body' | 'project'>): readonly Row[] {
  const { units } = project;
  const estimates = restsOn(body);
  return measurements.flatMap(({ key, name, unit }) => {
    const estimate = estimates.find((one) => one.key === key)?.value;
    if (estimate !== undefined)
      return [{ name: said(name), value: printPhrase(say`${mm(estimate)} (estimated)`, units) }];
    const value = measuredOf(project.body)[key];
    if (value === undefined) return [];
    return [
      { name: said(name), value: unit === 'years' ? words`${number(value, 1)} years` : formatLength(value, units) },
    ];
  });
}

const FINISHED: readonly (readonly [keyof Measures, Phrase])[] = [
  ['hipGirthFinished', say`Hip`],
  ['waistOpening', say`Waist opening`],
  ['pullOnNeeded', say`Waist must open to at least`],
  ['thighGirthFinished', say`Thigh`],
  ['hemGirthFinished', say`Hem`],
  ['inseamFront', say`Inseam`],
  ['crotchLengthFinished', say`Crotch length`],
  ['crotchDepthFinished', say`Finished rise`],
];

/** How deep casing or band stands when it is sewn: both its layers are half of what is cut. */
const waistDepthRow = ({ project, measures }: Draft): Row => ({
  name: project.waist.finish === 'knitBand' ? words`Waist band, finished depth` : words`Casing, finished depth`,
  value: formatLength(measures.casingHeight / 2, project.units),
});

/** The finished measures that a wearer or a sewer asks for. */
export const finishedRows = (draft: Draft): readonly Row[] => [
  ...FINISHED.map(([key, name]) => ({
    name: said(name),
    value: measureTold(draft, key, (value) => formatLength(value, draft.project.units)),
  })),
  waistDepthRow(draft),
  { name: words`Hem, worn`, value: printPhrase(hemEnds(draft), draft.project.units) },
];

const SHAPE_WORDS: Readonly<Record<string, Phrase>> = {
  block: say`as the block`,
  pyjama: say`pyjama`,
  straight: say`straight`,
};

/** What was chosen, in words. */
export function choiceSentences({ project, leg, legs: [{ finished }] }: Draft): readonly string[] {
  const { units } = project;
  const { length, shape } = project.leg;
  const lengthTold = typeof length === 'string' ? LENGTH_NAMES[length] : say`inseam ${mm(length.inseam)}`;
  const shapeTold =
    typeof shape === 'string' ? (SHAPE_WORDS[shape] ?? say`${own(shape)}`) : say`hem ${mm(shape.hemGirth)} round`;
  const [back, front] = [centreStands('back', leg.back), centreStands('front', leg.front)];
  const spread = mm(leg.spread);
  return [
    clothTold(project),
    leg.straightenAutomatic
      ? say`Leg: ${lengthTold}, shape ${shapeTold}, spread ${spread}, centre back ${back}, centre front ${front} (straightened as needed to pull on).`
      : say`Leg: ${lengthTold}, shape ${shapeTold}, spread ${spread}, centre back ${back}, centre front ${front} (straightened by hand).`,
    say`Waist: ${waistTold(project)}.`,
    say`Hem: ${hemTold(project)}.`,
    say`Seam allowances are drawn in: ${drawnAllowances(project, finished)}.`,
    sidesTold(project),
  ].flatMap((phrase) => (isSaid(phrase) ? [printPhrase(phrase, units)] : []));
}

/** The allowances of the seams that this pair has, wherever something is sewn on at waist or hem there, too. */
const drawnAllowances = (
  { allowances: { inseam, crotch, waist, hem } }: Project,
  { heights, hemPlan }: Draft['legs'][number]['finished'],
): Phrase =>
  inTurn(
    [
      say`inseam ${mm(inseam)}`,
      say`crotch and centres ${mm(crotch)}`,
      ...(heights.kind === 'folded' ? [] : [say`waist ${mm(waist)}`]),
      ...(hemPlan.kind === 'folded' ? [] : [say`hem ${mm(hem)}`]),
    ],
    ', ',
  );

function clothTold({ cloth, use }: Project): Phrase {
  const kind = cloth.kind === 'knit' ? say`knit` : say`woven`;
  const named = cloth.stretch > 0 ? say`${kind}, stretches ${number(cloth.stretch * 100, 0)} %` : kind;
  const wash = cloth.washFirst ? say`washed before cutting` : say`not washed first`;
  return use.forSleeping
    ? say`Cloth: ${named}, ${mm(cloth.width)} wide, ${wash}; for sleeping.`
    : say`Cloth: ${named}, ${mm(cloth.width)} wide, ${wash}.`;
}

/** By what left and right differ, as worn; nothing where they are alike. */
function sidesTold({ sides }: Project): Phrase {
  const told = (['left', 'right'] as const).flatMap((side) =>
    Object.entries(sides?.[side] ?? {})
      .filter(([, more]) => more > 0)
      .map(([key, more]) => say`${inside(fieldName(`sides.${side}.${key}`))} by ${mm(more)}`),
  );
  return told.length === 0 ? UNSAID : say`Left and right, as worn: ${inTurn(told, ', ')}.`;
}

/** How the waist is finished. */
function waistTold(project: Project): Phrase {
  const { waist } = project;
  const raw =
    waist.rawEdge === 'turnedUnder'
      ? say`raw edge turned under`
      : project.sewing.machine === 'serger'
        ? say`raw edge overlocked`
        : say`raw edge zigzagged`;
  const wide = mm(waist.elasticWidth);
  const elastic =
    waist.rows === 1 ? say`elastic ${wide} wide, 1 row` : say`elastic ${wide} wide, ${number(waist.rows)} rows`;
  switch (waist.finish) {
    case 'elasticCasing':
      return waist.elastic === 'threaded'
        ? say`fold-over casing for ${elastic}, threaded; ${raw}`
        : say`fold-over casing for ${elastic}, sewn to the raw edge`;
    case 'drawstringCasing':
      return say`fold-over casing for a cord ${mm(waist.cordWidth)} wide; ${raw}`;
    case 'elasticAndDrawstring':
      return say`fold-over casing for ${elastic}, and a cord ${mm(waist.cordWidth)} wide above it; ${raw}`;
    case 'separateCasing':
      return say`separate casing for ${elastic}`;
    case 'knitBand':
      return say`band of knit, ${mm(waist.bandHeight)} high`;
    case 'facedCasing':
      return say`faced casing for ${elastic}; ${raw}`;
  }
}

/** How the hem is finished. */
function hemTold(project: Project): Phrase {
  const hem = hemOf(project);
  const under =
    hem.turnUnder > 0
      ? say`${mm(hem.turnUnder)} turned under`
      : project.sewing.machine === 'serger'
        ? say`edge overlocked`
        : say`edge zigzagged`;
  switch (hem.finish) {
    case 'turned':
      return say`turned ${mm(hem.depth)}, ${under}`;
    case 'elasticCasing':
      return say`casing for elastic ${mm(hem.elasticWidth)} wide`;
    case 'drawstringCasing':
      return say`casing for a cord ${mm(hem.cordWidth)} wide, opening at the side`;
    case 'contrastBand':
      return say`band ${mm(hem.bandHeight)} high, doubled`;
    case 'ribCuff':
      return say`cuff of rib, ${mm(hem.bandHeight)} high`;
    case 'facedHem':
      return say`faced, ${mm(hem.depth)} deep, ${under}`;
  }
}

/** What to cut. */
export function cutRows(draft: Draft): readonly Row[] {
  const { pieces, project } = draft;
  const { waist, hem, units } = project;
  const notions = notionsToBuy(draft);
  const cloth = pieces.map((piece) => ({
    name: isLeg(piece) ? words`${pieceName(piece)}, of the cloth` : said(pieceName(piece)),
    value: piece.mirrored
      ? words`${number(piece.cut)} (${number(piece.cut / 2)} mirrored)`
      : words`${number(piece.cut)}`,
  }));
  const length = (name: Phrase, long: Mm | undefined, count: number): readonly Row[] =>
    long === undefined
      ? []
      : [
          {
            name: printPhrase(name, units),
            value: printPhrase(count === 1 ? say`${mm(long)}` : say`${number(count)} × ${mm(long)}`, units),
          },
        ];
  return [
    ...cloth,
    ...length(say`${mm(waist.elasticWidth)} elastic`, notions.elasticLength, waist.rows),
    ...length(say`${mm(waist.cordWidth)} cord`, waist.cord === 'bought' ? notions.cordLength : undefined, 1),
    ...length(say`${mm(hem.elasticWidth)} elastic, hems`, notions.hemElasticLength, 2),
    ...length(say`${mm(hem.cordWidth)} cord, hems`, hem.cord === 'bought' ? notions.hemCordLength : undefined, 2),
  ];
}

/** One sentence for each check that is not good, wrong before doubtful; one that says all is well where there is none. */
export function checkSentences(checks: readonly Check[], units: Units): readonly string[] {
  const said = (['wrong', 'doubtful'] as const).flatMap((verdict) =>
    checks
      .filter((check) => check.verdict === verdict)
      .map(({ name, reason, remedy }) => {
        const told = inTurn([reason, remedy]);
        return printPhrase(
          verdict === 'wrong' ? say`Wrong – ${name}: ${told}` : say`Doubtful – ${name}: ${told}`,
          units,
        );
      }),
  );
  return said.length > 0 ? said : [words`All ${number(checks.length)} checks are good.`];
}

/** Each caution in a sentence or two, and the note that stands under all of them. */
export const cautionSentences = (cautions: readonly Caution[], units: Units): readonly string[] => [
  ...cautions.map(({ title, sentence }) => printPhrase(say`${title}: ${sentence}`, units)),
  printPhrase(CAUTIONS_NOTE, units),
];

/** The lines that are measured after joining, to prove the joins. */
export const controlRows = (draft: Draft): readonly Row[] =>
  controlLengths(draft.printed, sheetsOf(draft), draft.project.paper).map(({ name, length }) => ({
    name: printPhrase(name, draft.project.units),
    value: formatLength(length, draft.project.units),
  }));

const VULGAR_SCALES: Readonly<Record<string, Phrase>> = {
  '0.5': say`half`,
  '0.333': say`a third`,
  '0.25': say`a quarter`,
};
const scaleTold = (scale: number): Phrase => VULGAR_SCALES[plain(scale, 3)] ?? say`${number(scale, 3)}`;

/** The same in short lines, for every sheet. */
export function sheetRemarks({ scale, allowances, correctX, correctY }: Project['paper']): readonly string[] {
  const size = scaleTold(scale);
  const sample =
    allowances === 'full' ? words`${size} of true size, full allowances` : words`${size} of true size, allowances too`;
  return [
    ...(scale === 1 ? [] : [sample]),
    ...(correctX === 1 && correctY === 1
      ? []
      : [words`printer corrected × ${number(correctX, 4)}, × ${number(correctY, 4)}`]),
  ];
}

/** What a sheet that is not at true size, or is corrected for its printer, says of itself; empty on an ordinary sheet. */
export function scaleSentence({ scale, allowances, correctX, correctY }: Project['paper']): string {
  const size = scaleTold(scale);
  const sample =
    allowances === 'full'
      ? say`Drawn at ${size} of true size, allowances at full width: a sample, not for cutting out.`
      : say`Drawn at ${size} of true size, allowances too: a sample, not for cutting out.`;
  const corrected = say`Corrected for one printer: × ${number(correctX, 4)} along the short side, × ${number(correctY, 4)} along the long side.`;
  return said(inTurn([scale === 1 ? UNSAID : sample, correctX === 1 && correctY === 1 ? UNSAID : corrected]));
}

/** An amount in the reader's unit, and once more in the other one where that says anything else. */
export function bothUnits(phrase: Phrase, units: Units): string {
  const here = printPhrase(phrase, units);
  const there = printPhrase(phrase, units === 'cm' ? 'inch' : 'cm');
  return here === there ? here : `${here} (${there})`;
}
