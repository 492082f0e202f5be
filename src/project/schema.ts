import * as v from 'valibot';
import { BLOCK_EDGES, FARTHEST, MOST_EDGE_CURVES } from '../block';
import { type BodyInput, bodyProblems, measurements } from '../body';
import { HEM_FINISHES, WAIST_FINISHES } from '../edges';
import { LENGTH_NAMES, type LengthName } from '../leg';
import { type Mm, mm, number, type Phrase, type Problem, say } from '../length';
import { WIDEST_MARGIN } from '../sheets';
import type { Project } from './types';

// The library's messages are strings; what is wanted travels through them as a small code and becomes a phrase again.
const between = (unit: 'mm' | 'number', low: number, high: number) => {
  const code = `between|${unit}|${low}|${high}`;
  return v.pipe(v.number(code), v.finite(code), v.minValue(low, code), v.maxValue(high, code));
};
const length = (low: Mm, high: Mm, fallback: Mm) => v.optional(between('mm', low, high), fallback);
const figure = (low: number, high: number, fallback: number) => v.optional(between('number', low, high), fallback);
const oneOf = <const Values extends readonly string[]>(...values: Values) =>
  v.picklist(values, `oneOf|${values.join('|')}`);
const yesOrNo = (fallback: boolean) => v.optional(v.boolean('yesOrNo'), fallback);
const part = <const Entries extends v.ObjectEntries>(entries: Entries) => noList(v.looseObject(entries, 'part'));
/** To the library a list is an object too; here it would be taken for a group in which everything is left out. */
const noList = <const Group extends v.GenericSchema>(group: Group): Group => ({
  ...group,
  '~run': (dataset, config) => (Array.isArray(dataset.value) ? nowhere : group)['~run'](dataset, config),
});
const nowhere = v.never('part');
const optionalPart = <const Entries extends v.ObjectEntries>(entries: Entries) =>
  v.optional(part(entries), {} as never);

/** Names of lengths and shapes; a number goes in an object of its own, e.g. `{ "inseam": 640 }`. */
const LENGTHS = Object.keys(LENGTH_NAMES) as readonly LengthName[];
const SHAPES = ['pyjama', 'block', 'straight'] as const;

const bodyEntries = Object.fromEntries(
  measurements.map((m) => [m.key, v.optional(v.pipe(v.number(`limits|${m.key}`), v.finite(`limits|${m.key}`)))]),
);

const draftedBlocks = part({
  source: v.optional(oneOf('drafted', 'traced'), 'drafted'),
  hipEase: length(-200, 400, 50.8),
  waistEase: length(0, 200, 25),
  riseEase: v.optional(v.union([v.literal('auto'), between('mm', 0, 100)], 'auto|mm|0|100'), 'auto'),
  crotchEase: v.optional(v.union([v.literal('auto'), between('mm', -30, 150)], 'auto|mm|-30|150'), 'auto'),
  balance: length(-30, 40, 10),
});

const coordinate = between('mm', -FARTHEST, FARTHEST);
const pair = v.strictTuple([coordinate, coordinate], 'pair');
const curvePoints = v.strictTuple([pair, pair, pair, pair], 'curve');

/** One fault says enough of an edge, which may hold hundreds of numbers. */
const edgeCurves = v.config(
  v.pipe(v.array(curvePoints, 'curves'), v.maxLength(MOST_EDGE_CURVES, `mostCurves|${MOST_EDGE_CURVES}`)),
  { abortEarly: true },
);

const tracedBlock = part({
  edges: part(Object.fromEntries(BLOCK_EDGES.map((name) => [name, edgeCurves]))),
  grainline: v.strictTuple([pair, pair], 'twoPoints'),
  hipLevel: coordinate,
  kneeLevel: v.optional(coordinate),
});
const tracedBlocks = part({ source: v.literal('traced'), front: tracedBlock, back: tracedBlock });

const schemaWith = (allowance: Mm) =>
  v.looseObject({
    format: v.literal('legwork-project'),
    version: v.literal(1),
    name: v.optional(v.pipe(v.string('text'), v.maxLength(200, 'text')), 'Lounge pants'),
    units: v.optional(oneOf('cm', 'inch'), 'cm'),
    body: part({
      label: v.optional(v.pipe(v.string('text'), v.maxLength(200, 'text')), 'Body'),
      nappy: v.optional(v.boolean('yesOrNo')),
      ...bodyEntries,
    }),
    use: optionalPart({ forSleeping: yesOrNo(false) }),
    // A block is one of two kinds; which schema holds is decided by its source, so that problems name the right fields.
    block: v.optional(
      v.lazy((block) => ((block as { source?: unknown } | null)?.source === 'traced' ? tracedBlocks : draftedBlocks)),
      {},
    ),
    cloth: optionalPart({
      kind: v.optional(oneOf('woven', 'knit'), 'woven'),
      stretch: figure(0, 2, 0),
      washFirst: yesOrNo(true),
      width: length(300, 3200, 1500),
      oneWay: yesOrNo(false),
      shrinkLength: figure(0, 0.3, 0.03),
      shrinkWidth: figure(0, 0.3, 0.02),
      repeat: length(0, 1500, 0),
      repeatAcross: length(0, 1500, 0),
      grainTolerance: figure(0, 5, 0),
      layout: v.optional(oneOf('best', 'single', 'foldedLengthwise', 'foldedCrosswise'), 'best'),
    }),
    leg: optionalPart({
      spread: length(0, 250, 25.4),
      straighten: v.optional(v.union([v.literal('auto'), between('number', 0, 1)], 'auto|number|0|1'), 'auto'),
      raiseWaist: length(-120, 150, 0),
      lowerCrotch: length(0, 100, 0),
      length: v.optional(
        v.union(
          [oneOf(...LENGTHS), part({ inseam: between('mm', 30, 1300) })],
          `orNumber|inseam|30|1300|${LENGTHS.join('|')}`,
        ),
        'ankle',
      ),
      shape: v.optional(
        v.union(
          [oneOf(...SHAPES), part({ hemGirth: between('mm', 120, 2400) })],
          `orNumber|hemGirth|120|2400|${SHAPES.join('|')}`,
        ),
        'pyjama',
      ),
    }),
    waist: optionalPart({
      finish: v.optional(oneOf(...WAIST_FINISHES), 'elasticCasing'),
      elasticWidth: length(3, 80, 25.4),
      rows: v.optional(v.picklist([1, 2, 3, 4], 'between|number|1|4'), 1),
      turnOfCloth: length(0, 12, 3.2),
      elastic: v.optional(oneOf('threaded', 'sewnOn'), 'threaded'),
      rawEdge: v.optional(oneOf('overlocked', 'turnedUnder'), 'overlocked'),
      elasticLength: v.optional(v.union([v.literal('auto'), between('mm', 100, 3000)], 'auto|mm|100|3000'), 'auto'),
      cordWidth: length(2, 40, 10),
      cord: v.optional(oneOf('bought', 'ofCloth'), 'bought'),
      bandHeight: length(10, 150, 60),
      bandStretch: figure(0, 2, 1),
    }),
    hem: optionalPart({
      finish: v.optional(oneOf(...HEM_FINISHES), 'turned'),
      depth: length(5, 120, 30),
      turnUnder: length(0, 30, 10),
      elasticWidth: length(3, 50, 12.7),
      cordWidth: length(2, 20, 6),
      cord: v.optional(oneOf('bought', 'ofCloth'), 'bought'),
      bandHeight: length(10, 200, 60),
      ribStretch: figure(0, 2, 0.5),
    }),
    allowances: optionalPart({
      inseam: length(0, 40, allowance),
      crotch: length(0, 40, allowance),
      waist: length(0, 40, allowance),
      hem: length(0, 40, allowance),
    }),
    pocket: v.optional(
      v.nullable(
        part({
          width: length(40, 300, 150),
          height: length(40, 350, 165),
          facing: length(10, 80, 30),
          part: v.optional(oneOf('front', 'back'), 'back'),
          count: v.optional(v.picklist([1, 2], 'between|number|1|2'), 1),
        }),
      ),
      null,
    ),
    sewing: optionalPart({ machine: v.optional(oneOf('plain', 'serger'), 'plain') }),
    fit: v.optional(
      v.nullable(
        part({
          flatSeat: length(0, 40, 0),
          fullThigh: length(0, 40, 0),
          swayBack: length(0, 40, 0),
          sittingPull: length(0, 40, 0),
          knockKnees: length(-25, 25, 0),
        }),
      ),
      null,
    ),
    projector: optionalPart({ line: length(0.3, 6, 1.5), ground: v.optional(oneOf('dark', 'light'), 'dark') }),
    paper: optionalPart({
      sheet: v.optional(v.pipe(v.string('text'), v.maxLength(200, 'text')), 'A4'),
      orientation: v.optional(oneOf('auto', 'portrait', 'landscape'), 'auto'),
      margin: length(0, WIDEST_MARGIN, 10),
      overlap: length(0, 40, 10),
      ownWidth: length(150, 5080, 900),
      ownHeight: length(150, 5080, 1500),
      scale: figure(0.1, 1, 1),
      allowances: v.optional(oneOf('scaled', 'full'), 'scaled'),
      correctX: figure(0.95, 1.05, 1),
      correctY: figure(0.95, 1.05, 1),
    }),
  });

/** The schema by units. Default seam allowances: 15 mm in centimetre projects, ⅝ in in inch projects (practice). */
export const SCHEMAS = { cm: schemaWith(15), inch: schemaWith(15.875) } as const;

/**
 * Fills in a project's defaults and finds everything in it that can't be drafted.
 *
 * @param raw the parsed file, or a project being edited
 * @returns the project with unknown fields kept, and its problems; with problems the project must not be used
 */
export function checkedProject(raw: unknown): { readonly project: Project; readonly problems: readonly Problem[] } {
  const units =
    typeof raw === 'object' && raw !== null && (raw as { units?: unknown }).units === 'inch' ? 'inch' : 'cm';
  const result = v.safeParse(SCHEMAS[units], raw);
  if (result.issues) return { project: raw as Project, problems: result.issues.map(problemOf) };
  const project = result.output as unknown as Project;
  return { project, problems: bodyProblems(project.body as BodyInput) };
}

function problemOf(issue: v.BaseIssue<unknown>): Problem {
  // Inside a union the deepest mismatch says more than “none of these”.
  const inner = (issue.issues ?? []).find((i) => (i.path?.length ?? 0) > 0);
  const path = [...(issue.path ?? []), ...(inner?.path ?? [])].map((item) => String(item.key));
  const field = path.join('.') || 'project';
  const { input, message, expected } = inner ?? issue;
  // The name of a field is expected where the whole field is missing; the message is that of the group round it.
  const absent = input === undefined && expected?.startsWith('"');
  return { field, value: input, phrase: absent ? say`must not be left out.` : phraseOf(message) };
}

function phraseOf(code: string): Phrase {
  const [kind = '', ...rest] = code.split('|');
  const value = (unit: string | undefined, text: string | undefined) =>
    unit === 'mm' ? mm(Number(text)) : number(Number(text), 3);
  if (kind === 'between')
    return say`must be a number${unitWord(rest[0])} between ${value(rest[0], rest[1])} and ${value(rest[0], rest[2])}.`;
  if (kind === 'auto')
    return say`must be “auto” or a number${unitWord(rest[0])} between ${value(rest[0], rest[1])} and ${value(rest[0], rest[2])}.`;
  if (kind === 'oneOf') return say`must be ${rest.length > 1 ? 'one of ' : ''}${rest.join(', ')}.`;
  if (kind === 'orNumber') {
    const [name = '', low, high, ...names] = rest;
    return say`must be one of ${names.join(', ')}, or { "${name}": a number of millimetres between ${value('mm', low)} and ${value('mm', high)} }.`;
  }
  if (kind === 'limits') {
    const m = measurements.find((one) => one.key === rest[0]);
    if (m)
      return say`must be a number${unitWord(m.unit)} between ${value(m.unit, String(m.lowest))} and ${value(m.unit, String(m.highest))}.`;
  }
  if (kind === 'yesOrNo') return say`must be true or false.`;
  if (kind === 'text') return say`must be a text of at most 200 characters.`;
  if (kind === 'part') return say`must be an object in braces.`;
  if (kind === 'pair') return say`must be a point: [x, y] in millimetres.`;
  if (kind === 'twoPoints') return say`must be two points: [[x, y], [x, y]] in millimetres.`;
  if (kind === 'curve') return say`must be four points: start, two handles, end.`;
  if (kind === 'mostCurves')
    return say`has more curves than the ${number(Number(rest[0]), 0)} that an edge may have; draw it with fewer points.`;
  if (kind === 'curves') return say`must be a list of curves.`;
  return say`has no place here.`;
}

const unitWord = (unit: string | undefined): string =>
  unit === 'mm' ? ' of millimetres' : unit === 'years' ? ' of years' : '';
