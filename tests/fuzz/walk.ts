import type { Chance } from './random';

/** How far from what is usual values are drawn: shares of the optional fields and of the numbers, each 0 … 1. */
export interface Temperature {
  /** An optional field is there at all. */
  readonly present: number;
  /** A number is exactly its lowest or its highest; else … */
  readonly limit: number;
  /** … anything between them, evenly; else it lies round its default. */
  readonly even: number;
}

/** What the schema itself doesn't say. */
export interface Asked {
  readonly chance: Chance;
  readonly temperature: Temperature;
  /** The limits of a number to which the schema gives none. */
  readonly limitsAt: (path: string) => readonly [number, number];
  /** Texts for a field that holds one. */
  readonly textsAt: (path: string) => readonly string[];
}

/** As much of a schema or of a step in its pipe as the walk looks at; the library's own types are one for each kind. */
export interface Walked {
  readonly type: string;
  readonly entries?: Readonly<Record<string, Walked>>;
  readonly wrapped?: Walked;
  readonly default?: unknown;
  readonly options?: readonly unknown[];
  readonly literal?: unknown;
  readonly item?: Walked;
  readonly items?: readonly Walked[];
  readonly pipe?: readonly Walked[];
  readonly requirement?: unknown;
  readonly getter?: (input: unknown) => Walked;
}

/** How wide “round the default” is, as a share of the whole range. */
const ROUND = 0.08;
/** Most curves of an edge, numbers of a list. */
const MOST_ITEMS = 3;
/** The share of numbers that are whole, as people type them. */
const WHOLE = 0.4;

/**
 * A value that a schema takes, or takes but for what only other rooms refuse: drawn by walking the schema, so that a new
 * field is drawn from the day on which it is in the schema. A kind of schema that isn't known here throws.
 *
 * @param schema or a part of one
 * @param asked chance, temperature, and what the schema doesn't say
 * @param path where in the project this is, dotted
 * @param usual the default, where the schema has one
 * @returns undefined where an optional field was left out
 */
export function drawn(schema: Walked, asked: Asked, path = '', usual?: unknown): unknown {
  const { chance, temperature } = asked;
  switch (schema.type) {
    case 'optional': {
      const inner = schema.wrapped as Walked;
      // A group is always gone into: whether its own fields are there is drawn for each of them.
      if (!isGroup(inner) && !chance.happens(temperature.present)) return undefined;
      return drawn(inner, asked, path, schema.default);
    }
    case 'nullable':
      return chance.happens(0.5) ? drawn(schema.wrapped as Walked, asked, path) : null;
    case 'loose_object':
    case 'object':
    case 'strict_object': {
      const fields = Object.entries(schema.entries ?? {}).map(([key, inner]) => {
        return [key, drawn(inner, asked, path === '' ? key : `${path}.${key}`)] as const;
      });
      return Object.fromEntries(fields.filter(([, value]) => value !== undefined));
    }
    case 'number':
      return number(schema, asked, path, usual);
    case 'string':
      return chance.oneOf(asked.textsAt(path));
    case 'boolean':
      return chance.happens(0.5);
    case 'literal':
      return schema.literal;
    case 'picklist':
      return chance.oneOf(schema.options ?? []);
    case 'union':
      return drawn(chance.oneOf(schema.options ?? []) as Walked, asked, path, usual);
    case 'lazy':
      return drawn((schema.getter as (input: unknown) => Walked)(undefined), asked, path);
    case 'array': {
      const count = Math.floor(chance.between(0, MOST_ITEMS + 1));
      return Array.from({ length: count }, () => drawn(schema.item as Walked, asked, path));
    }
    case 'strict_tuple':
    case 'tuple':
      return (schema.items ?? []).map((item) => drawn(item, asked, path));
    default:
      throw new Error(`The walk through the schema doesn't know “${schema.type}” at ${path}.`);
  }
}

/** A schema that is a group of fields, or becomes one. */
const isGroup = ({ type }: Walked): boolean => type.endsWith('object') || type === 'lazy';

function number(schema: Walked, { chance, temperature, limitsAt }: Asked, path: string, usual: unknown): number {
  const limit = (type: string) => schema.pipe?.find((step) => step.type === type)?.requirement;
  const [least, most] = [limit('min_value'), limit('max_value')];
  const [low, high] = typeof least === 'number' && typeof most === 'number' ? [least, most] : limitsAt(path);
  if (chance.happens(temperature.limit)) return chance.oneOf([low, high]);
  const value = chance.happens(temperature.even)
    ? chance.between(low, high)
    : (typeof usual === 'number' ? usual : (low + high) / 2) + chance.bell() * ROUND * (high - low);
  const within = Math.min(high, Math.max(low, value));
  if (schema.pipe?.some(({ type }) => type === 'integer')) return Math.round(within);
  return chance.happens(WHOLE) && high - low > 5 ? Math.min(high, Math.max(low, Math.round(within))) : within;
}
