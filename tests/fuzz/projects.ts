import { measurements } from '../../src/body';
import { exampleProject } from '../../src/project';
import { SCHEMAS } from '../../src/project/schema';
import { PAPER_SIZES } from '../../src/sheets';
import { type Measured, plausibleBody } from './bodies';
import { type Chance, chanceOf } from './random';
import { numberedBlocks, tracedBlocks } from './traced';
import { type Asked, drawn, type Temperature, type Walked } from './walk';

/** A project file as it was drawn: nothing of it is checked, every field that is left out has its default. */
export type RawDraw = Readonly<Record<string, unknown>>;

/** The temperatures of a draw's choices, from a few fields that were changed to everything at its limits. */
const TEMPERATURES: Readonly<Record<string, Temperature>> = {
  few: { present: 0.06, limit: 0.3, even: 0.6 },
  middle: { present: 0.5, limit: 0.02, even: 0.08 },
  chosen: { present: 0.6, limit: 0.05, even: 0.25 },
  even: { present: 0.85, limit: 0.05, even: 1 },
  limits: { present: 0.8, limit: 0.7, even: 0.5 },
};

/** Wherever a body comes from that isn't walked: the example's own, or one like people's. */
const BODIES = ['example', 'plausible', 'plausible', 'plausible', 'measured', 'wild', 'wild'] as const;

const TRACED = 0.08;
/** Of the blocks that were brought along, those by numbers. */
const NUMBERED = 0.2;
/** Of the traced blocks, those that are no block at all. */
const SENSELESS = 0.03;

/**
 * The project of a seed. The same seed draws the same project as long as the schema, the catalogue of measurements and
 * the starting bodies stay as they are.
 *
 * @param seed a whole number
 */
export function projectDrawn(seed: number): RawDraw {
  const chance = chanceOf(seed);
  const temperature = TEMPERATURES[chance.oneOf(Object.keys(TEMPERATURES))] as Temperature;
  const asked: Asked = { chance, temperature, limitsAt, textsAt };
  const units = chance.oneOf(['cm', 'inch'] as const);
  const root = SCHEMAS[units] as unknown as Walked;
  // Nobody chooses what was printed last; it has a test of its own.
  const { block: blockSchema, body: bodySchema, lastPrint: _noChoice, ...entries } = root.entries ?? {};
  const rest = drawn({ type: 'loose_object', entries }, asked) as RawDraw;
  return {
    ...rest,
    units,
    body: bodyDrawn(bodySchema as Walked, asked),
    block: blockDrawn(blockSchema as Walked, asked),
  };
}

function bodyDrawn(schema: Walked, asked: Asked): RawDraw {
  const { chance } = asked;
  const kind = chance.oneOf(BODIES);
  const { label, nappy } = drawn(schema, asked, 'body') as RawDraw;
  const about = { ...(label === undefined ? {} : { label }), ...(nappy === undefined ? {} : { nappy }) };
  if (kind === 'wild') return withRequired(drawn(schema, asked, 'body') as RawDraw, chance);
  if (kind === 'example') return { ...exampleProject.body, ...about };
  return { ...about, ...plausibleBody(chance, kind === 'measured' ? 0.8 : 0.25) };
}

/** A body that was drawn without regard to what goes with what, with everything without which nothing is drafted. */
function withRequired(body: RawDraw, chance: Chance): RawDraw {
  const required = measurements.filter(({ key, required: needed }) => needed && body[key] === undefined);
  const figures: Measured = plausibleBody(chance, 0);
  return { ...body, ...Object.fromEntries(required.map(({ key }) => [key, figures[key]])) };
}

function blockDrawn(schema: Walked, asked: Asked): unknown {
  const { chance } = asked;
  const lazy = schema.wrapped as Walked;
  // The schema of a drafted block also takes the word for the other kind, which needs another schema.
  if (!chance.happens(TRACED)) return { ...(drawn(lazy, asked, 'block') as RawDraw), source: 'drafted' };
  if (chance.happens(NUMBERED)) return numberedBlocks(chance);
  const traced = (lazy.getter as (input: unknown) => Walked)({ source: 'drawn' });
  if (chance.happens(SENSELESS)) return drawn(traced, asked, 'block');
  return { source: 'drawn', ...tracedBlocks(chance) };
}

function limitsAt(path: string): readonly [number, number] {
  const found = measurements.find(({ key }) => path === `body.${key}`);
  if (!found) throw new Error(`Neither the schema nor the catalogue of measurements gives limits to ${path}.`);
  return [found.lowest, found.highest];
}

const TEXTS = ['Body 1', 'u', 'Ωραίο <b>&amp;</b> "x"', '', 'a long name '.repeat(16)] as const;

const textsAt = (path: string): readonly string[] =>
  path === 'paper.sheet' ? [...PAPER_SIZES.map(({ name }) => name), 'own'] : TEXTS;
