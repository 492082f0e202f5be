import {
  type PiecePlace,
  placer,
  type Wanted,
  type WantedAlong,
  type WantedLine,
  type WantedOnce,
} from '../../drawing';
import {
  alongEdge,
  cutCurves,
  type EdgeName,
  type LineName,
  type Piece,
  type PieceKind,
  type PieceText,
} from '../../edges';
import type { Mm } from '../../length';
import {
  type Curve,
  curveMap,
  flattenCurves,
  type Point,
  pathEnd,
  pathStart,
  pointsBounds,
  pointsHold,
  straight,
} from '../../plane';
import type { Draft } from '../../project';
import { all, dated, inside, mm, own, type Phrase, printPhrase, say, words } from '../../words';
import { OTHER_CLOTHS } from './cloth-rows';
import { CUT_WORDS, FOLD_WORDS, GRAIN_WORDS, LINE_WORDS, type LineWords, stitchWords } from './line-words';

/** What is said of all pieces of a print alike. */
export interface SaidOfAll {
  readonly project: Draft['project'];
  /** Paper per drawing: allowances are told as a ruler on the paper finds them. */
  readonly scale: number;
  /** The day of the print; files that have none of their own leave it out. */
  readonly date?: Date;
}

/** The capitals along lines: a share of how long the piece is, and the tallest. */
const ALONG = { share: 1 / 400, tallest: 2.8 } as const;
/** Under the first line of a piece's own words the others are so much smaller. */
const UNDER = 0.5;
/** A longer line is broken, and one that is longer than two of these is shortened. */
const LONGEST = 36;

/**
 * All that is to be said on the pieces: of each which one it is, how many are cut, whose, of what, with which
 * allowances; which half of a leg is which; and along each line what it is.
 *
 * @param pieces as they are drawn, and their places
 */
export function patternWords(pieces: readonly Piece[], places: readonly PiecePlace[], of: SaidOfAll): Wanted {
  const all = pieces.map((piece, i) => ({ piece, place: places[i] as PiecePlace }));
  return {
    once: [
      ...all.map(({ piece, place }) => blockOf(piece, place, pieceLines(piece, of))),
      ...all.flatMap(({ piece, place }) => halvesOf(piece, place)),
    ],
    along: all.flatMap(({ piece, place }) => lineWords(piece, place, of)),
  };
}

/** The words of a piece in a block: its name and count, then the others, most needed first. */
export function blockOf(piece: Piece, place: PiecePlace, lines: readonly string[]): WantedOnce {
  const own = piece.texts.filter(({ says }) => says === 'piece' || says === 'title' || says === 'label');
  const [head, ...rest] = [...own].sort((a, b) => Number(b.says === 'piece') - Number(a.says === 'piece'));
  const at = placer(place);
  const inPiece = ringOf(piece, at);
  const middle = pointsBounds([head, ...rest].flatMap((text) => (text ? [at(text.at)] : [])));
  const size = head?.size ?? ALONG.tallest;
  const under = lines.map((text): WantedLine => ({ text, size: Math.max(UNDER * size, alongSize(piece)) }));
  return {
    lines: [{ text: head?.text ?? '', size }, ...under],
    at: { x: (middle.left + middle.right) / 2, y: (middle.top + middle.bottom) / 2 },
    turn: (head?.turn ?? 0) + place.turn,
    belongs: { at: (p) => pointsHold(inPiece, p), within: pointsBounds(inPiece) },
  };
}

/** What stands under a piece's name. */
function pieceLines(piece: Piece, { project, scale, date }: SaidOfAll): readonly string[] {
  const told = (phrase: Phrase) => printPhrase(phrase, project.units);
  const notes = piece.texts.filter(({ says }) => says === 'note').map(({ text }) => text);
  return [
    ...broken(project.name),
    ...broken(project.body.label),
    ...notes,
    told(allowancesTold(piece, scale)),
    told(clothTold(piece.kind, project.cloth.kind)),
    words`arrow along the selvedge`,
    ...(date ? [words`printed ${own(dated(date))}`] : []),
  ].filter((text) => text !== '');
}

/** The allowances that are drawn in, from the widest. */
function allowancesTold({ cutLine }: Piece, scale: number): Phrase {
  const widths = [...new Set(cutLine.map(({ allowance }) => allowance))].filter((width) => width > 0);
  const told = widths.sort((a, b) => b - a).map((width) => say`${mm(width * scale)}`);
  if (told.length === 0) return say`no seam allowances`;
  return told.length === 1 ? say`seam allowance included: ${all(told)}` : say`seam allowances included: ${all(told)}`;
}

const OF_CLOTH: Readonly<Partial<Record<PieceKind, Phrase>>> = {
  waistBand: OTHER_CLOTHS.knit,
  cuff: OTHER_CLOTHS.rib,
  hemBand: OTHER_CLOTHS.contrast,
};

function clothTold(piece: PieceKind, kind: Draft['project']['cloth']['kind']): Phrase {
  const other = OF_CLOTH[piece];
  if (other) return say`${inside(other)}`;
  return kind === 'knit' ? say`main cloth, a knit` : say`main cloth, woven`;
}

/** A name in one line or two, and no more of it. */
function broken(name: string): readonly string[] {
  const letters = [...name.replace(/\s+/g, ' ').trim()];
  if (letters.length <= LONGEST) return [letters.join('')];
  const space = letters.lastIndexOf(' ', LONGEST);
  const at = space > LONGEST / 2 ? space : LONGEST;
  const second = letters.slice(at).join('').trim();
  return [
    letters.slice(0, at).join(''),
    [...second].length <= LONGEST ? second : `${[...second].slice(0, LONGEST - 1).join('')}…`,
  ];
}

/** Front and back of a leg, and whose it is where the two differ: each on its own side of the side line. */
export function halvesOf(piece: Piece, place: PiecePlace): readonly WantedOnce[] {
  const at = placer(place);
  const inPiece = ringOf(piece, at);
  const side = piece.lines.find(({ name }) => name === 'side')?.curves;
  const ends = side && ([at(pathStart(side)), at(pathEnd(side))] as const);
  const half = (p: Point) =>
    ends ? Math.sign((ends[1].x - ends[0].x) * (p.y - ends[0].y) - (ends[1].y - ends[0].y) * (p.x - ends[0].x)) : 0;
  const pinned = ({ says }: PieceText) => says === 'half' || says === 'whose';
  return piece.texts.filter(pinned).map(({ text, at: own, size, turn }) => {
    const to = at(own);
    return {
      lines: [{ text, size }],
      at: to,
      turn: turn + place.turn,
      belongs: { at: (p) => half(p) === half(to) && pointsHold(inPiece, p), within: pointsBounds(inPiece) },
    };
  });
}

const ringOf = (piece: Piece, at: (p: Point) => Point): readonly Point[] =>
  flattenCurves(cutCurves(piece), 0.5).map(at);

function alongSize(piece: Piece): Mm {
  const { left, top, right, bottom } = pointsBounds(cutCurves(piece).map(([a]) => a));
  return Math.min(ALONG.tallest, ALONG.share * Math.max(right - left, bottom - top));
}

/** What each line of a piece says along itself; lines that say the same say it once. */
export function lineWords(piece: Piece, place: PiecePlace, { project, scale }: SaidOfAll): readonly WantedAlong[] {
  const at = placer(place);
  const placed = (curves: readonly Curve[]) => curves.map((curve) => curveMap(curve, at));
  const size = alongSize(piece);
  const wanted = (
    runs: readonly (readonly Curve[])[],
    says: LineWords,
    also: Partial<Pick<WantedAlong, 'side' | 'mark'>> = {},
  ): WantedAlong => {
    const [first, ...others] = says.map((phrase) => printPhrase(phrase, project.units));
    return {
      runs: runs.map(placed),
      says: [first as string, ...others],
      size,
      turn: place.turn,
      side: 'above',
      ...also,
    };
  };
  const runsBy = <K>(items: readonly { readonly key: K; readonly curves: readonly Curve[] }[]) => {
    const found = new Map<K, (readonly Curve[])[]>();
    for (const { key, curves } of items) found.set(key, [...(found.get(key) ?? []), curves]);
    return [...found];
  };
  const within = { side: 'inside' } as const;
  const sewn = runsBy(
    piece.stitchLine.flatMap(({ name, curves }): readonly { key: EdgeName; curves: readonly Curve[] }[] =>
      allowanceOf(piece, name) > 0 ? [{ key: alongEdge(name), curves }] : [],
    ),
  );
  const folds = runsBy(piece.folds.map(({ name, curves }) => ({ key: FOLD_WORDS[name], curves })));
  const lines = runsBy(piece.lines.flatMap(({ name, curves }) => (name === 'cutLine' ? [] : [{ key: name, curves }])));
  const marks: readonly LineName[] = ['quarter', 'hemQuarter', 'cordOpening', 'hemCordOpening'];
  return [
    ...(piece.cutLine.length > 0
      ? [
          wanted(
            piece.cutLine.map(({ curves }) => curves),
            CUT_WORDS,
            within,
          ),
        ]
      : []),
    wanted([[straight(...piece.grainline)]], GRAIN_WORDS),
    ...sewn.map(([name, runs]) => wanted(runs, stitchWords(name, allowanceOf(piece, name) * scale), within)),
    ...folds.map(([says, runs]) => wanted(runs, says)),
    ...lines.map(([name, runs]) => wanted(runs, LINE_WORDS[name], marks.includes(name) ? { mark: true } : {})),
  ];
}

const allowanceOf = ({ cutLine }: Piece, name: EdgeName): Mm =>
  cutLine.find((edge) => edge.name === name)?.allowance ?? 0;
