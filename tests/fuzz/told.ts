import { measurements } from '../../src/body';
import type { Check } from '../../src/check';
import { checksOf, type Draft, type Project, sewingOf, valueAt, workingOf } from '../../src/project';
import { SCHEMAS } from '../../src/project/schema';
import { type Phrase, type Problem, printPhrase } from '../../src/words';
import { type Find, find, notFinite, told } from './find';
import type { Walked } from './walk';

/** What no sentence for people may hold: the traces of a value that isn't there. */
const BROKEN = /NaN|undefined|\bnull\b|Infinity|\[object/;
const ROUNDING = 0.02;

/** What a good check measured lies on this side of what was wanted; within the tolerance of it in all others. */
const AT_LEAST = /^(pull-on|elastic-reaches|hem-entry|channels|tilt|traced-parts|pieced-tip|.*-ease|.*-entry)$/;
const AT_MOST = /^(leg-fits-cloth|crotch-ends|fullness|leans|inseams-slant|waist-cord)$/;

/** Every number that is told is a number, every sentence whole, every verdict what its own figures say. */
export function toldFinds(draft: Draft, checks: readonly Check[] = checksOf(draft)): readonly Find[] {
  const working = workingOf(draft);
  const { measures, cautions, notions, body, project } = draft;
  const numbers = [
    ...notFinite(measures, 'measures'),
    ...notFinite(draft.pieces, 'pieces'),
    ...(draft.printed === draft.pieces ? [] : notFinite(draft.printed, 'printed')),
    ...notFinite(notions, 'notions'),
    ...notFinite(body, 'body'),
  ];
  const steps = sewingOf(draft);
  return [
    ...numbers.slice(0, 3).map((seen) => find('not finite', seen)),
    ...checks.flatMap(checkFinds),
    ...working.flatMap(({ id, sentence, formula, lines }) => [
      ...sentenceFinds(`working ${id}`, sentence, true),
      ...sentenceFinds(`working ${id}`, formula, false),
      ...notFinite(lines, `working ${id}`)
        .slice(0, 1)
        .map((seen) => find('not finite', seen)),
    ]),
    ...(working.length < 10 ? [find('working short', `${working.length} steps`)] : []),
    ...(new Set(working.map(({ id }) => id)).size < working.length
      ? [find('working twice', 'two steps have one id')]
      : []),
    ...phrasesIn(cautions).flatMap((phrase) => sentenceFinds('caution', phrase, false)),
    ...steps.flatMap((step) => phrasesIn(step).flatMap((phrase) => sentenceFinds(`step ${step.id}`, phrase, false))),
    ...(project === undefined || steps.length < 5 ? [find('steps short', `${steps.length} steps`)] : []),
  ];
}

function checkFinds(check: Check): readonly Find[] {
  const { id, measured, wanted, tolerance, verdict, reason, remedy } = check;
  const numbers = notFinite({ measured, wanted, tolerance }, `check ${id}`);
  if (numbers.length > 0) return [find('not finite', numbers.join(', '))];
  const by = AT_LEAST.test(id) ? wanted - measured : AT_MOST.test(id) ? measured - wanted : Math.abs(measured - wanted);
  return [
    ...(verdict === 'good' && by > tolerance + ROUNDING
      ? [find(`good against its figures: ${id}`, `measured ${told(measured)}, wanted ${told(wanted)}`)]
      : []),
    ...sentenceFinds(`check ${id}`, reason, true),
    ...sentenceFinds(`check ${id}`, remedy, verdict === 'wrong'),
  ];
}

function sentenceFinds(where: string, phrase: Phrase, needed: boolean): readonly Find[] {
  return (['cm', 'inch'] as const).flatMap((units) => {
    const text = printPhrase(phrase, units);
    if (BROKEN.test(text)) return [find('sentence broken', `${where}: ${text}`)];
    return needed && text.trim().length < 3 ? [find('sentence empty', where)] : [];
  });
}

/** Every phrase that stands somewhere in plain data. */
function phrasesIn(value: unknown): readonly Phrase[] {
  if (typeof value !== 'object' || value === null) return [];
  if ('template' in value && 'values' in value) return [value as Phrase];
  return Object.values(value).flatMap(phrasesIn);
}

/** A refusal says where and why, names a field that a project has, and the value that this project holds. */
export function refusalFinds(problems: readonly Problem[], project: Project): readonly Find[] {
  if (problems.length === 0) return [find('refused without a word', '')];
  return problems.flatMap(({ field, value, phrase }) => {
    const held = valueAt(project, field);
    const sentence = printPhrase(phrase, 'cm');
    const finds = [...sentenceFinds(`refusal of ${field}`, phrase, true)];
    if (sentence.length < 10 || !/[.\w]$/.test(sentence)) finds.push(find('refusal unclear', `${field}: ${sentence}`));
    if (!fieldExists(field)) finds.push(find('refused field unknown', field));
    if (JSON.stringify(held) !== JSON.stringify(value))
      finds.push(
        find(`refused another value: ${field}`, `${JSON.stringify(value)} told, ${JSON.stringify(held)} held`),
      );
    return finds;
  });
}

/** Whether a dotted path leads somewhere in the schema. */
function fieldExists(path: string): boolean {
  let here: readonly Walked[] = [SCHEMAS.cm as unknown as Walked];
  for (const key of path.split('.')) {
    here = here.flatMap(groups).flatMap(({ entries, item, items }) => {
      if (/^\d+$/.test(key)) return [item, ...(items ?? [])].filter((one) => one !== undefined);
      const inner = entries?.[key];
      return inner ? [inner] : [];
    });
  }
  return here.length > 0 || measurements.some(({ key }) => path === `body.${key}`);
}

/** What a schema may be once its wrappings are off. */
function groups(schema: Walked): readonly Walked[] {
  if (schema.wrapped) return groups(schema.wrapped);
  if (schema.type === 'union') return (schema.options as readonly Walked[]).flatMap(groups);
  if (schema.type !== 'lazy') return [schema];
  const getter = schema.getter as (input: unknown) => Walked;
  return [getter({}), getter({ source: 'drawn' }), getter({ source: 'numbers' })].flatMap(groups);
}
