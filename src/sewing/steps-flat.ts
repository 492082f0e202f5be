import { openingPatch } from '../cloth';
import type { EdgeName, PieceKind } from '../edges';
import type { Mm } from '../length';
import { all, mm, type Phrase, say, UNSAID } from '../words';
import { tuckedUnder } from './channels';
import { edgesOf, lengthOf, sewingFacts } from './facts';
import { cordPieces, type Garment, pieceOfKind } from './garment';
import { hemTucked, knitTurnedOnce, turnedDepth } from './hem-turning';
import { makeStep } from './make-step';
import { fromEdge } from './seams';
import type { EdgeWork, FinishedHow, SewingStep } from './step';
import { barStitch, buttonholeStitch, edgeStitch, seamStitch } from './stitches';
import { PER_METRE, timeOf } from './time';

/** What is easier while each leg still lies flat: pocket, cord openings, overlocked raw edges, folds. */
export const flatSteps = (g: Garment): readonly SewingStep[] => [
  ...pocketSteps(g),
  ...openingSteps(g),
  ...cordPieces(g).map((piece) => cordStep(g, piece.kind)),
  ...rawEdgeSteps(g),
  ...foldSteps(g),
];

function pocketSteps(g: Garment): readonly SewingStep[] {
  const { pocket } = g;
  if (!pocket) return [];
  const piece = pieceOfKind(g, 'pocket');
  const sides = ['rightSide', 'bottom', 'leftSide'] as const;
  const part = pocket.part === 'front' ? say`front` : say`back`;
  const bare = g.allowances.inseam === 0;
  const serger = g.machine === 'serger';
  const round = pocket.count * lengthOf(piece, sides);
  return [
    makeStep({
      id: 'pocket.facing',
      part: 'flat',
      title: say`Finish the pocket’s opening`,
      tasks: [
        serger ? say`Overlock the upper edge of the pocket.` : say`Zigzag the upper edge of the pocket.`,
        ...(bare
          ? [say`Turn the facing, ${mm(pocket.facing)} deep, to the wrong side on the fold line, and press.`]
          : [
              say`Fold the facing, ${mm(pocket.facing)} deep, to the right side on the fold line. Stitch both its ends, ${fromEdge(g.allowances.inseam)}, and cut the corners off slantwise, close to the stitching.`,
              say`Turn the facing to the wrong side, push its corners out, and press.`,
            ]),
        say`Stitch it down ${mm(pocket.facing - 5)} below the fold.`,
      ],
      why: bare ? UNSAID : say`Turned so, the facing’s ends are clean at the corners, where the pocket wears first.`,
      settings: [...barStitch(g), ...edgeStitch(g)],
      check: say`The opening is ${mm(pocket.width)} wide between the stitching lines of its sides, and straight.`,
      sews: [{ piece: 'pocket', edges: ['opening'], how: 'heldDown' }],
      finishes: [{ piece: 'pocket', edges: ['opening'], how: 'overlocked' }],
      time: timeOf(5 * pocket.count, pocket.count * pocket.width, PER_METRE.topstitch),
      scene: { view: 'pocket', stage: 'facing' },
    }),
    makeStep({
      id: 'pocket.sides',
      part: 'flat',
      title: say`Press the pocket’s sides under`,
      tasks: bare
        ? [
            say`Zigzag the sides and the bottom: no allowance is drawn there, so the pocket is sewn on over its edges.`,
            say`Press it.`,
          ]
        : [
            serger ? say`Overlock the sides and the bottom.` : say`Zigzag the sides and the bottom.`,
            say`Press ${mm(g.allowances.inseam)} to the wrong side, the bottom first, then the sides, which go on in line with the turned facing. Fold the lower corners so that no raw edge shows.`,
          ],
      settings: edgeStitch(g),
      check: say`The pocket measures ${mm(pocket.width)} by ${mm(pocket.height)}.`,
      finishes: [{ piece: 'pocket', edges: sides, how: 'overlocked' }],
      care: say`Steam burns fingers: hold the fold with a ruler, not with your hand.`,
      time: timeOf(5 * pocket.count, round, PER_METRE.overlock),
      scene: { view: 'pocket', stage: 'sides' },
    }),
    makeStep({
      id: 'pocket.placed',
      part: 'flat',
      title: pocket.count === 2 ? say`Sew the pockets on` : say`Sew the pocket on`,
      tasks: [
        pocket.count === 2
          ? say`Lay the pocket on the right side of the ${part} of each leg, its corners on the marks, and pin it.`
          : say`Lay the pocket on the right side of the ${part} of the right leg, as it is worn, its corners on the marks, and pin it.`,
        say`Stitch close to the edge: down one side, along the bottom, up the other side. Sew a small triangle at both upper corners, where a hand pulls.`,
      ],
      why: say`It is sewn on first, because a leg lies flat only before its inseam is sewn.`,
      settings: barStitch(g),
      check: say`A hand goes in, and the upper edge runs level, square to the side line.`,
      sews: [{ piece: 'pocket', edges: sides, how: 'topstitched' }],
      time: timeOf(8 * pocket.count, round, PER_METRE.topstitch),
      scene: { view: 'pocket', stage: 'placed' },
    }),
  ];
}

/** Openings for cords, in one layer of cloth, before anything is folded over it. */
function openingSteps(g: Garment): readonly SewingStep[] {
  const { waist, hem, finished, notions } = g;
  const channel = finished.heights.channels.find((one) => one.holds === 'cord');
  const step = (at: 'waist' | 'hem', width: Mm): SewingStep =>
    makeStep({
      id: `${at}.openings`,
      part: 'flat',
      title: at === 'waist' ? say`Make the openings for the cord` : say`Make the openings for the hem cords`,
      tasks: [
        at === 'waist'
          ? say`On each leg one opening is marked ${mm(20)} from the centre-front stitching line, in the part of the casing that will lie outside.`
          : say`On each leg one opening is marked at the side, just above the hem fold, in the part that will lie outside.`,
        say`Iron a patch of interfacing, ${mm(openingPatch(width))} by ${mm(openingPatch(width))}, to the wrong side behind the mark.`,
        say`Sew an upright buttonhole, ${mm(width + 3)} long, on the mark, or press in an eyelet of ${mm(Math.max(4, 0.8 * width))}; make one on a scrap with its patch first. Cut the buttonhole open from both ends to the middle, a pin across each end.`,
      ],
      why: say`It goes through the outer layer alone, so it is made before the casing is folded.`,
      settings: buttonholeStitch(g),
      check: say`The cord, with a pin in its end, goes through.`,
      care: say`A seam ripper slips: the pins stop it, and your other hand stays behind it.`,
      time: timeOf(20),
      scene: { view: 'openings', at },
    });
  return [
    ...(channel && notions.cordLength !== undefined ? [step('waist', waist.cordWidth)] : []),
    ...(notions.hemCordLength !== undefined ? [step('hem', hem.cordWidth)] : []),
  ];
}

/** A cord cut from cloth: a tube; a waist cord's two halves are joined first. */
function cordStep(g: Garment, kind: PieceKind): SewingStep {
  const piece = pieceOfKind(g, kind);
  const long = edgesOf(piece, 'upper', 'lower');
  const halves = kind === 'waistCord';
  const allowance = (edge: EdgeName) => piece.cutLine.find((one) => one.name === edge)?.allowance ?? 0;
  return makeStep({
    id: halves ? 'waist.tube' : 'hem.tube',
    part: 'flat',
    title: halves ? say`Sew the waist cord` : say`Sew the hem cords`,
    tasks: [
      ...(halves
        ? [
            say`Lay the two halves right sides together, sew one end of each to the other, ${fromEdge(allowance('leftEnd'))}, and press the seam open.`,
          ]
        : []),
      say`Fold the strip lengthwise, right sides together, and sew along the open long edge, ${mm(allowance('upper'))} from it.`,
      say`Turn it with a safety pin, turn its free ends in by ${mm(allowance('rightEnd'))}, stitch them shut, and press.`,
    ],
    settings: seamStitch(g),
    check: say`The cord is equally wide from end to end, and no raw edge shows.`,
    sews: halves
      ? [
          { piece: kind, edges: [...long, 'leftEnd'], how: 'seamed' },
          { piece: kind, edges: ['rightEnd'], how: 'topstitched' },
        ]
      : [
          { piece: kind, edges: long, how: 'seamed' },
          { piece: kind, edges: ['leftEnd', 'rightEnd'], how: 'topstitched' },
        ],
    finishes: [{ piece: kind, edges: [...long, 'leftEnd', 'rightEnd'], how: 'enclosed' }],
    time: timeOf(15, (lengthOf(piece, long) / 2) * piece.cut, PER_METRE.seam),
    scene: { view: 'strip', piece: kind, stage: 'folded' },
  });
}

/** Raw edges that are overlocked alone, while they lie flat. */
function rawEdgeSteps(g: Garment): readonly SewingStep[] {
  const works = overlockedEdges(g);
  if (works.length === 0) return [];
  const length = works.reduce((sum, { piece, edges }) => sum + 2 * lengthOf(pieceOfKind(g, piece), edges), 0);
  const names = all(works.map(rawEdgeName));
  return [
    makeStep({
      id: 'raw-edges',
      part: 'flat',
      title: g.machine === 'serger' ? say`Overlock the raw edges` : say`Zigzag the raw edges`,
      tasks: [
        g.machine === 'serger'
          ? say`Overlock ${names}. Let the knife just skim the edge, or switch it off.`
          : say`Zigzag ${names} so that the needle lands once in the cloth and once just off its edge.`,
        ...(g.machine === 'plain' && g.cloth.kind === 'woven'
          ? [say`A machine without zigzag? Bind them with thin bias tape instead.`]
          : []),
        say`Press them.`,
      ],
      why:
        g.cloth.kind === 'knit'
          ? say`These edges are turned inside, once, and held by one row of stitching. Knit doesn’t fray, but without this it curls.`
          : say`These edges are turned inside and held by one row of stitching; nothing else keeps them from fraying.`,
      settings: edgeStitch(g),
      check: say`The edges are as long as before: not stretched, not drawn together.`,
      finishes: works,
      time: timeOf(3, length, PER_METRE.overlock),
      scene: { view: 'rawEdges' },
    }),
  ];
}

/** What people call edges that are overlocked alone. */
export function rawEdgeName({ piece, edges }: EdgeWork<FinishedHow>): Phrase {
  if (piece === 'waistFacing') return say`the lower edge of both waist facings`;
  if (piece === 'hemFacing') return say`the upper edge of both hem facings`;
  return edges.includes('waist') ? say`the upper edge of both legs` : say`the lower edge of both legs`;
}

/** Which edges those are. */
export function overlockedEdges(g: Garment): readonly EdgeWork<FinishedHow>[] {
  const { finished, waist, hem } = g;
  const one = (piece: PieceKind, edge: EdgeName): EdgeWork<FinishedHow> => ({
    piece,
    edges: [edge],
    how: 'overlocked',
  });
  const { kind } = finished.heights;
  const overlocked = waist.rawEdge === 'overlocked' && !elasticSewnOn(g);
  return [
    ...(kind === 'folded' && overlocked ? [one('leg', 'waist')] : []),
    ...(kind === 'faced' && overlocked ? [one('waistFacing', 'lower')] : []),
    ...(finished.hemPlan.kind === 'folded' && hem.turnUnder === 0 ? [one('leg', 'hem')] : []),
    ...(finished.hemPlan.kind === 'faced' && hem.turnUnder === 0 ? [one('hemFacing', 'upper')] : []),
  ];
}

/** Only a casing for elastic alone has it sewn to the raw edge; else it is threaded. */
export const elasticSewnOn = ({ waist }: Garment): boolean =>
  waist.finish === 'elasticCasing' && waist.elastic === 'sewnOn';

/** How much is turned under of an edge that is folded here: of the hem, else of the casing. */
function turnedUnderHere({ finished: { heights, hemPlan }, waist, hem }: Garment): Mm {
  if (hemPlan.kind === 'folded' && hem.turnUnder > 0) return hem.turnUnder;
  return heights.kind === 'folded' && waist.rawEdge === 'turnedUnder' ? tuckedUnder(heights.catch) : 0;
}

/** The folds of casing and hem, pressed in while they can be reached with an iron. */
function foldSteps(g: Garment): readonly SewingStep[] {
  const { finished, waist, hem } = g;
  const { heights, hemPlan } = finished;
  const { waistRound, hemRound } = sewingFacts(g);
  const atWaist = heights.kind === 'folded';
  const atHem = hemPlan.kind === 'folded';
  if (!atWaist && !atHem) return [];
  return [
    makeStep({
      id: 'folds',
      part: 'flat',
      title: say`Press the folds in`,
      tasks: [
        say`Lay each leg wrong side up: the folds that you marked are seen there.`,
        ...(atWaist && waist.rawEdge === 'turnedUnder' && heights.catch > 0
          ? [say`At the waist press ${mm(tuckedUnder(heights.catch))} to the wrong side first.`]
          : []),
        ...(atWaist
          ? [
              say`Fold the casing to the wrong side on the fold line, which is ${mm(heights.fold + heights.catch)} below the raw edge, and press.`,
            ]
          : []),
        ...(atHem && hem.turnUnder > 0
          ? [
              say`At the hem press ${mm(hemTucked(g))} to the wrong side, then fold again on the hem line, ${mm(turnedDepth(g))} deep, and press.`,
            ]
          : []),
        ...(atHem && hem.turnUnder === 0
          ? [say`At the hem fold ${mm(turnedDepth(g))} to the wrong side on the hem line, and press.`]
          : []),
        ...knitTurnedOnce(g, turnedUnderHere(g)),
        say`Open the folds again. Their creases stay and guide you later.`,
      ],
      why: say`An iron does it well on flat cloth, and badly in a narrow tube.`,
      check: say`The creases run straight from edge to edge, and the turned parts lie flat on the leg.`,
      care: say`Try the iron’s heat on a scrap; the steam comes out at your fingers.`,
      time: timeOf(5, (atWaist ? waistRound : 0) + (atHem ? 2 * hemRound : 0), PER_METRE.press),
      scene: { view: 'folds' },
    }),
  ];
}
