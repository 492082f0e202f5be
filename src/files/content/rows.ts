import { measurements } from '../../body';
import type { Check } from '../../check';
import { isLeg, pieceName } from '../../edges';
import { centreStands, LENGTH_NAMES } from '../../leg';
import { formatLength, type Mm, plain, type Units } from '../../length';
import {
  type Draft,
  fieldName,
  hemOf,
  type Measures,
  measureTold,
  notionsToBuy,
  type Project,
  sheetsOf,
} from '../../project';
import { CAUTIONS_NOTE, type Caution } from '../../sewing';
import { controlLengths } from '../../sheets';
import { type Phrase, printPhrase, say, words } from '../../words';

/** A name and its value, for a list. */
export interface Row {
  readonly name: string;
  readonly value: string;
}

/** The body's measurements that were given, in the order of the catalogue. */
export function bodyRows({ body, units }: Project): readonly Row[] {
  return measurements.flatMap(({ key, name, unit }) => {
    const value = body[key];
    if (value === undefined) return [];
    return [
      { name: words`${name}`, value: unit === 'years' ? `${plain(value, 1)} years` : formatLength(value, units) },
    ];
  });
}

const FINISHED: readonly (readonly [keyof Measures, string])[] = [
  ['hipGirthFinished', 'Hip'],
  ['waistOpening', 'Waist opening'],
  ['pullOnNeeded', 'needed to pull on'],
  ['thighGirthFinished', 'Thigh'],
  ['hemGirthFinished', 'Hem'],
  ['inseamFront', 'Inseam'],
  ['crotchLengthFinished', 'Crotch length'],
  ['crotchDepthFinished', 'Crotch depth'],
  ['casingHeight', 'Casing above the waist edge'],
];

/** The finished measures that a wearer or a sewer asks for. */
export const finishedRows = (draft: Draft): readonly Row[] =>
  FINISHED.map(([key, name]) => ({
    name,
    value: measureTold(draft, key, (value) => formatLength(value, draft.project.units)),
  }));

const SHAPE_WORDS: Readonly<Record<string, string>> = { block: 'as the block', pyjama: 'pyjama', straight: 'straight' };

/** What was chosen, in words. */
export function choiceSentences({ project, leg }: Draft): readonly string[] {
  const { cloth, allowances, units } = project;
  const l = (value: Mm) => formatLength(value, units);
  const stretch = cloth.stretch > 0 ? `, stretches ${plain(cloth.stretch * 100, 0)} %` : '';
  const { length, shape } = project.leg;
  const lengthWords = typeof length === 'string' ? words`${LENGTH_NAMES[length]}` : `inseam ${l(length.inseam)}`;
  const shapeWords = typeof shape === 'string' ? (SHAPE_WORDS[shape] ?? shape) : `hem ${l(shape.hemGirth)} round`;
  const stands = (part: 'front' | 'back') =>
    `centre ${part} ${printPhrase(centreStands(part, leg[part]), project.units)}`;
  const how = leg.straightenAutomatic ? 'as needed to pull on' : 'by hand';
  return [
    `Cloth: ${cloth.kind}${stretch}, ${l(cloth.width)} wide, ${cloth.washFirst ? 'washed before cutting' : 'not washed first'}${project.use.forSleeping ? '; for sleeping' : ''}.`,
    `Leg: ${lengthWords}, shape ${shapeWords}, spread ${l(leg.spread)}, ${stands('back')}, ${stands('front')} (straightened ${how}).`,
    `Waist: ${waistWords(project)}.`,
    `Hem: ${hemWords(project)}.`,
    `Seam allowances are drawn in: inseam ${l(allowances.inseam)}, crotch and centres ${l(allowances.crotch)}.`,
    ...sideSentences(project),
  ];
}

/** By what left and right differ, as worn; nothing where they are alike. */
function sideSentences({ sides, units }: Project): readonly string[] {
  const told = (['left', 'right'] as const).flatMap((side) =>
    Object.entries(sides?.[side] ?? {})
      .filter(([, more]) => more > 0)
      .map(([key, more]) => `${fieldName(`sides.${side}.${key}`).toLowerCase()} by ${formatLength(more, units)}`),
  );
  return told.length === 0 ? [] : [`Left and right, as worn: ${told.join(', ')}.`];
}

/** How the waist is finished, in words. */
function waistWords({ waist, units }: Project): string {
  const l = (value: Mm) => formatLength(value, units);
  const rows = waist.rows === 1 ? '1 row' : `${waist.rows} rows`;
  const raw = waist.rawEdge === 'overlocked' ? 'raw edge overlocked' : 'raw edge turned under';
  const elastic = `elastic ${l(waist.elasticWidth)} wide, ${rows}`;
  switch (waist.finish) {
    case 'elasticCasing':
      return `fold-over casing for ${elastic}, ${waist.elastic === 'threaded' ? 'threaded' : 'sewn on'}; ${raw}`;
    case 'drawstringCasing':
      return `fold-over casing for a cord ${l(waist.cordWidth)} wide; ${raw}`;
    case 'elasticAndDrawstring':
      return `fold-over casing for ${elastic}, and a cord ${l(waist.cordWidth)} wide above it; ${raw}`;
    case 'separateCasing':
      return `separate casing for ${elastic}`;
    case 'knitBand':
      return `band of knit, ${l(waist.bandHeight)} high`;
    case 'facedCasing':
      return `faced casing for ${elastic}; ${raw}`;
  }
}

/** How the hem is finished, in words. */
function hemWords(project: Project): string {
  const { units } = project;
  const hem = hemOf(project);
  const l = (value: Mm) => formatLength(value, units);
  const under = hem.turnUnder > 0 ? `${l(hem.turnUnder)} turned under` : 'edge overlocked';
  switch (hem.finish) {
    case 'turned':
      return `turned ${l(hem.depth)}, ${under}`;
    case 'elasticCasing':
      return `casing for elastic ${l(hem.elasticWidth)} wide`;
    case 'drawstringCasing':
      return `casing for a cord ${l(hem.cordWidth)} wide, opening at the side`;
    case 'contrastBand':
      return `band ${l(hem.bandHeight)} high, doubled`;
    case 'ribCuff':
      return `cuff of rib, ${l(hem.bandHeight)} high`;
    case 'facedHem':
      return `faced, ${l(hem.depth)} deep, ${under}`;
  }
}

/** What to cut. */
export function cutRows(draft: Draft): readonly Row[] {
  const { pieces, project } = draft;
  const { waist, hem, units } = project;
  const notions = notionsToBuy(draft);
  const l = (value: Mm) => formatLength(value, units);
  const cloth = pieces.map((piece) => ({
    name: isLeg(piece) ? words`${pieceName(piece)}, of the cloth` : words`${pieceName(piece)}`,
    value: piece.mirrored ? `${piece.cut}, ${piece.cut / 2} of them mirrored` : `${piece.cut}`,
  }));
  const length = (name: string, mm: Mm | undefined, count: number): readonly Row[] =>
    mm === undefined ? [] : [{ name, value: `${count === 1 ? '' : `${count} × `}${l(mm)}` }];
  return [
    ...cloth,
    ...length(`${l(waist.elasticWidth)} elastic`, notions.elasticLength, waist.rows),
    ...length(`${l(waist.cordWidth)} cord`, waist.cord === 'bought' ? notions.cordLength : undefined, 1),
    ...length(`${l(hem.elasticWidth)} elastic, hems`, notions.hemElasticLength, 2),
    ...length(`${l(hem.cordWidth)} cord, hems`, hem.cord === 'bought' ? notions.hemCordLength : undefined, 2),
  ];
}

/** One sentence for each check that is not good, wrong before mind; one that says all is well where there is none. */
export function checkSentences(checks: readonly Check[], units: Units): readonly string[] {
  const said = (['wrong', 'mind'] as const).flatMap((verdict) =>
    checks
      .filter((check) => check.verdict === verdict)
      .map((check) => {
        const parts = [printPhrase(check.reason, units), printPhrase(check.remedy, units)];
        return `${verdict === 'wrong' ? 'Wrong' : 'Mind'} – ${words`${check.name}`}: ${parts.filter((part) => part !== '').join(' ')}`;
      }),
  );
  return said.length > 0 ? said : [`All ${checks.length} checks are good.`];
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

const VULGAR_SCALES: Readonly<Record<string, string>> = { '0.5': 'half', '0.333': 'a third', '0.25': 'a quarter' };

/** The same in short lines, for every sheet. */
export function sheetRemarks({ scale, allowances, correctX, correctY }: Project['paper']): readonly string[] {
  const size = VULGAR_SCALES[plain(scale, 3)] ?? plain(scale, 3);
  return [
    ...(scale === 1 ? [] : [`${size} of true size, ${allowances === 'full' ? 'full allowances' : 'allowances too'}`]),
    ...(correctX === 1 && correctY === 1 ? [] : [`printer corrected × ${plain(correctX, 4)}, × ${plain(correctY, 4)}`]),
  ];
}

/** What a sheet that is not at true size, or is corrected for its printer, says of itself; empty on an ordinary sheet. */
export function scaleSentence({ scale, allowances, correctX, correctY }: Project['paper']): string {
  const parts: string[] = [];
  if (scale !== 1) {
    const size = VULGAR_SCALES[plain(scale, 3)] ?? plain(scale, 3);
    const seams = allowances === 'full' ? 'allowances at full width' : 'allowances too';
    parts.push(`Drawn at ${size} of true size, ${seams}: a sample, not for cutting out.`);
  }
  if (correctX !== 1 || correctY !== 1) {
    parts.push(
      `Corrected for one printer: × ${plain(correctX, 4)} along the short side, × ${plain(correctY, 4)} along the long side.`,
    );
  }
  return parts.join(' ');
}

/** An amount in the reader's unit, and once more in the other one where that says anything else. */
export function bothUnits(phrase: Phrase, units: Units): string {
  const own = printPhrase(phrase, units);
  const other = printPhrase(phrase, units === 'cm' ? 'inch' : 'cm');
  return own === other ? own : `${own} (${other})`;
}
