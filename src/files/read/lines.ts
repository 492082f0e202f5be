import { type SaxesAttributeNS, SaxesParser, type SaxesTagNS } from 'saxes';
import { applyToPoint, compose, type Matrix } from 'transformation-matrix';
import { plainWords } from '../../length';
import { type Curve, loadPathReader } from '../../plane';
import type { Drawing, DrawnRun, DrawnWords } from '../../trace';
import { number, own, type Phrase, Refusal, say } from '../../words';
import {
  type Attributes,
  drawnSize,
  innerPlace,
  MOST_CURVES,
  refuseDrawing,
  trueSize,
  turnOf,
  userLength,
} from './place';
import { ENDS, pathDataOf } from './shapes';
import { declarationsOf, effectOf, ruleEffect, type Styled, type StyleRule, stylingRules } from './style';

/** A line of a drawing by its names, in millimetres, y down. */
export interface SvgLine {
  readonly names: DrawnRun['names'];
  readonly runs: readonly (readonly Curve[])[];
}

/** What is kept in a file to be used elsewhere, or cuts away, is no line of the drawing. */
const NOT_DRAWN: ReadonlySet<string> = new Set(['defs', 'symbol', 'clipPath', 'mask', 'pattern', 'marker']);
const SVG = 'http://www.w3.org/2000/svg';

/** A drawing of blocks has a few dozen elements, one whose lines are cut into short ones thousands; these many take a second or two. */
const MOST_ELEMENTS = 60_000;
/** Of one element. */
const MOST_ATTRIBUTES = 300;
const LONGEST_STYLE = 10_000;
/** All style sheets together. */
const LARGEST_SHEET = 200_000;
const DEEPEST = 200;
/** Lines by the name of an edge, of all that are there. */
const MOST_LINES = 2000;
const LONGEST_PATH = 200_000;
const MOST_RULES = 200;
/** No name of a line is longer; a file may repeat it for every line in a group. */
const LONGEST_NAME = 100;
/** Elements whose words stand on the drawing, and how many of them are read. */
const WORDS: ReadonlySet<string> = new Set(['text', 'tspan']);
const MOST_WORDS = 5000;

/** An element that is open while the file is read. */
interface Open extends Styled {
  readonly place: Matrix;
  readonly names: readonly string[];
  readonly drawn: boolean;
  /** Where words of it begin. */
  readonly at: readonly [number, number];
  /** Why it lies where nobody can tell. */
  readonly lost: Phrase | undefined;
  readonly round: Open | undefined;
}

interface Found extends Open {
  readonly data: string;
}

/**
 * The lines of an SVG drawing at true size. Paths, lines and polylines are read, with every `transform` and drawing within
 * the drawing round them; what is hidden or only defined is not. A line that is placed in a way that isn't followed is
 * refused rather than read at a wrong place or size.
 *
 * @param text of the file
 * @param wanted whether a line of these names is asked for; the others are passed over
 * @throws Refusal where it is no SVG, has no true size, or has path data that can't be read
 */
export async function svgLines(
  text: string,
  wanted: (names: readonly string[]) => boolean,
): Promise<readonly SvgLine[]> {
  const { found } = elementsOf(text, wanted, { most: MOST_LINES, place: trueSize });
  const runsOf = await loadPathReader();
  return found.map(({ element, names, data, place, lost }) => {
    const [name = ''] = names;
    if (lost) throw new Refusal([{ field: plainWords(name), value: element, phrase: lost }]);
    const runs = data.length > LONGEST_PATH ? undefined : runsOf(data, place);
    if (!runs)
      refuseDrawing(data, say`stands in the ${own(element)} “${own(plainWords(name))}” and can’t be read as a path.`);
    return { names, runs };
  });
}

/**
 * All lines and words of an SVG drawing, whatever they are called. Lines of which nobody can tell where they lie are counted.
 *
 * @param text of the file
 * @throws Refusal where it is no SVG, or has more than any drawing of blocks
 */
export async function svgDrawing(text: string): Promise<Drawing> {
  let unit: number | undefined;
  const place = (own: Attributes) => {
    const size = drawnSize(own);
    unit = size.sized ? 1 : undefined;
    return size.place;
  };
  const { found, words } = elementsOf(text, () => true, { most: MOST_ELEMENTS, place });
  const runsOf = await loadPathReader();
  const runs: DrawnRun[] = [];
  let [unread, curves] = [0, 0];
  for (const { names, data, place: its, lost } of found) {
    const read = lost || data.length > LONGEST_PATH ? undefined : runsOf(data, its);
    if (!read) unread += 1;
    for (const run of read ?? []) {
      curves += run.length;
      if (curves > MOST_CURVES)
        refuseDrawing(
          undefined,
          say`has more than ${number(MOST_CURVES, 0)} curves, far more than a drawing of blocks.`,
        );
      runs.push({ names, curves: run });
    }
  }
  return { runs, words, unit, unread };
}

/** How a file is read: how many lines at most, and where the whole drawing lies. */
interface Reading {
  readonly most: number;
  readonly place: (own: Attributes) => Matrix;
}

function elementsOf(text: string, wanted: (names: readonly string[]) => boolean, reading: Reading) {
  const parser = new SaxesParser({ xmlns: true });
  const open: Open[] = [];
  const found: Found[] = [];
  const sheets: string[] = [];
  const words: DrawnWords[] = [];
  let [elements, attributes, sheetSize] = [0, 0, 0];
  parser.on('attribute', () => {
    attributes += 1;
    if (attributes > MOST_ATTRIBUTES)
      refuseDrawing(undefined, say`has an element of more than ${number(MOST_ATTRIBUTES, 0)} attributes.`);
  });
  parser.on('error', (error) => {
    throw notSvg(text, error.message.replace(/^(\d+):\d+: /, 'line $1: ').replace(/\.$/, ''));
  });
  parser.on('opentag', (tag: SaxesTagNS) => {
    elements += 1;
    attributes = 0;
    if (elements > MOST_ELEMENTS)
      refuseDrawing(
        undefined,
        say`has more than ${number(MOST_ELEMENTS, 0)} elements, far more than a drawing of blocks.`,
      );
    if (open.length === DEEPEST)
      refuseDrawing(undefined, say`is nested more than ${number(DEEPEST, 0)} levels deep; no drawing of blocks is.`);
    const round = open.at(-1);
    if (!round && tag.local !== 'svg') throw notSvg(text, `it starts with <${plainWords(tag.name)}>`);
    const own = attributesOf(tag);
    const one = opened(tag, own, round, reading);
    open.push(one);
    const data = one.drawn ? pathDataOf(one.element, own) : undefined;
    if (data === undefined || data.trim() === '' || !wanted(one.names)) return;
    if (found.length === reading.most)
      refuseDrawing(undefined, say`draws its blocks in more than ${number(reading.most, 0)} lines.`);
    found.push({ ...one, data });
  });
  const sheet = (css: string) => {
    const here = open.at(-1);
    if (here?.drawn && WORDS.has(here.element) && css.trim() !== '' && words.length < MOST_WORDS)
      words.push({
        text: plainWords(css.slice(0, LONGEST_NAME).trim()),
        at: applyToPoint(here.place, pointOf(here.at)),
      });
    if (here?.element !== 'style') return;
    sheetSize += css.length;
    if (sheetSize > LARGEST_SHEET)
      refuseDrawing(undefined, say`has a style sheet of more than ${number(LARGEST_SHEET / 1000, 0)} kB.`);
    sheets.push(css);
  };
  parser.on('text', sheet);
  parser.on('cdata', sheet);
  parser.on('closetag', () => open.pop());
  parser.write(text).close();
  return { found: styled(found, sheets.join('\n')), words };
}

const pointOf = ([x, y]: readonly [number, number]) => ({ x, y });

function opened(tag: SaxesTagNS, own: Attributes, round: Open | undefined, reading: Reading): Open {
  // What another namespace calls a path is none.
  const ours = tag.uri === SVG || tag.uri === '';
  if ((own.style?.length ?? 0) > LONGEST_STYLE)
    refuseDrawing(own.style, say`is a style of more than ${number(LONGEST_STYLE, 0)} letters.`);
  const style = declarationsOf(own.style ?? '');
  const { hides, moves } = effectOf(style);
  const inner = round && tag.local === 'svg' ? innerPlace(own) : undefined;
  const place = round ? compose(round.place, turnOf(own.transform), inner ?? turnOf(undefined)) : reading.place(own);
  const pivoted = own.transform !== undefined && (own['transform-origin'] ?? style.get('transform-origin'));
  const lost =
    round?.lost ??
    (moves ? byStyle(moves) : undefined) ??
    (pivoted ? byStyle(`transform-origin: ${pivoted.slice(0, LONGEST_NAME)}`) : undefined) ??
    (round && tag.local === 'svg' && !inner
      ? say`lies in a drawing within the drawing whose size isn’t written in plain numbers.`
      : undefined) ??
    (tag.local === 'use' ? say`is drawn by reference (use), which isn’t read; draw the line itself.` : undefined) ??
    (tag.local === 'line' && ENDS.some((end) => userLength(own[end]) === undefined)
      ? say`has an end that isn’t written in plain numbers.`
      : undefined);
  return {
    element: ours ? tag.local : '',
    id: own.id ?? '',
    classes: (own.class ?? '').slice(0, LONGEST_NAME).split(/\s+/),
    place,
    at: [userLength(own.x) || (round?.at[0] ?? 0), userLength(own.y) || (round?.at[1] ?? 0)],
    names: [...namesOf(own), ...(round?.names ?? [])],
    drawn: ours && (round?.drawn ?? true) && !NOT_DRAWN.has(tag.local) && !hides && !isHidden(own),
    lost,
    round,
  };
}

const byStyle = (how: string): Phrase =>
  say`is moved by its style (${own(plainWords(how))}), which isn’t read; move it by the attribute “transform” alone.`;

/** The lines with what the drawing's style sheets do to them and to the groups round them. */
function styled(found: readonly Found[], css: string): readonly Found[] {
  const rules = stylingRules(css);
  if (rules.length > MOST_RULES)
    refuseDrawing(
      undefined,
      say`has a style sheet that hides or moves lines by more than ${number(MOST_RULES, 0)} rules.`,
    );
  if (rules.length === 0) return found;
  return found.flatMap((line): readonly Found[] => {
    const effects = withAll(line).flatMap((one) => rules.map((rule: StyleRule) => ruleEffect(rule, one)));
    if (effects.some(({ hides }) => hides)) return [];
    const moves = effects.find((effect) => effect.moves !== undefined)?.moves;
    return [moves === undefined ? line : { ...line, lost: line.lost ?? byStyle(moves) }];
  });
}

/** An element and all that are round it. */
function withAll(one: Open): readonly Open[] {
  const all: Open[] = [];
  for (let here: Open | undefined = one; here; here = here.round) all.push(here);
  return all;
}

const notSvg = (text: string, why: string): Refusal =>
  new Refusal([
    {
      field: 'file',
      value: text.slice(0, 40),
      phrase: say`is no SVG drawing that can be read: ${own(plainWords(why))}.`,
    },
  ]);

/** Attributes by their names; those of another namespace, such as a layer's label, by their local ones. */
function attributesOf(tag: SaxesTagNS): Attributes {
  const all: readonly SaxesAttributeNS[] = Object.values(tag.attributes);
  return Object.fromEntries([...all].reverse().map(({ local, value }) => [local, value]));
}

const namesOf = ({ id, label }: Attributes): readonly string[] =>
  [label, id].flatMap((name) => (name === undefined || name === '' ? [] : [name.slice(0, LONGEST_NAME)]));

const isHidden = ({ display, visibility }: Attributes): boolean =>
  display === 'none' || visibility === 'hidden' || visibility === 'collapse';
