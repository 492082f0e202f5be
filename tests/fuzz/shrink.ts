import { withValue } from '../../src/project';
import type { Look } from './judge';
import { ENDLESS, type Judge } from './judging';
import type { RawDraw } from './projects';

/** How long one find may be made smaller, milliseconds. */
const LONGEST = 60_000;
/** What never ends is taken for that sooner here: it did once, so it will. */
const PATIENCE = 4_000;

/**
 * The same fault with less around it: fields are left to their defaults and numbers rounded as long as the same kind of
 * find stays.
 *
 * @param raw a project in which it was found
 * @param kind of the find
 * @param judge to look again
 * @param look as it was looked at when it was found
 */
export async function shrunk(raw: RawDraw, kind: string, judge: Judge, look: Look): Promise<RawDraw> {
  const until = Date.now() + LONGEST;
  const stays = async (project: RawDraw) =>
    Date.now() < until &&
    (await judge.ask({ project, look }, kind === ENDLESS ? PATIENCE : undefined)).finds.some(
      (one) => one.kind === kind,
    );
  let small = raw;
  for (let before: RawDraw | undefined; before !== small && Date.now() < until; ) {
    before = small;
    for (const path of pathsIn(small)) {
      const less = changed(small, path, undefined);
      if (await stays(less)) small = less;
    }
    for (const [path, value] of numbersIn(small)) {
      for (const rounder of [Number(value.toPrecision(2)), Math.round(value), Number(value.toFixed(1))]) {
        if (rounder === value) break;
        const round = changed(small, path, rounder);
        if (!(await stays(round))) continue;
        small = round;
        break;
      }
    }
  }
  return small;
}

const changed = (raw: RawDraw, path: string, value: unknown): RawDraw => withValue(raw, path, value);

/** What every project file must say. */
const NEEDED = ['format', 'version', 'body'];

/** Dotted paths of all fields, groups before what is in them, as long as they are plain. */
function pathsIn(value: unknown, path = ''): readonly string[] {
  if (!isGroup(value)) return [];
  return Object.keys(value).flatMap((key) => {
    const at = path === '' ? key : `${path}.${key}`;
    return [...(NEEDED.includes(at) ? [] : [at]), ...pathsIn(value[key], at)];
  });
}

function numbersIn(value: unknown, path = ''): readonly (readonly [string, number])[] {
  if (typeof value === 'number') return path === 'version' ? [] : [[path, value]];
  if (!isGroup(value)) return [];
  return Object.entries(value).flatMap(([key, inner]) => numbersIn(inner, path === '' ? key : `${path}.${key}`));
}

const isGroup = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
