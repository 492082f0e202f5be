import {
  casingHeights,
  finishLeg,
  HEM_FINISHES,
  legPieces,
  notionsOf,
  otherPieces,
  WAIST_FINISHES,
} from '../../src/edges';
import { growthFor } from '../../src/leg';
import { draft, exampleProject, garmentOf, hemOf, type Project } from '../../src/project';
import type { Garment } from '../../src/sewing';
import { printProblem } from '../../src/words';
import { combinations, covering } from '../properties/covering';

/** What a test changes about the example, part by part; a body takes the place of the whole body. */
export type Parts = { readonly [K in keyof Project]?: Partial<Project[K]> | null };

function projectWithParts(parts: Parts): Project {
  const merged = Object.fromEntries(
    Object.entries(parts).map(([key, part]) => [
      key,
      part === null || key === 'body'
        ? part
        : { ...((exampleProject as never)[key] as object | null), ...(part as object) },
    ]),
  );
  return { ...exampleProject, ...merged } as Project;
}

/** The changed example, ready to be sewn; throws where it is refused, for no test here means to be. */
export function garmentWith(parts: Parts = {}): Garment {
  const result = draft(projectWithParts({ paper: { sheet: 'A0' }, ...parts }));
  if (result.ok) return garmentOf(result.value);
  throw new Error(result.problems.map((problem) => printProblem(problem, 'cm')).join('\n'));
}

export const POCKET = { width: 150, height: 165, facing: 30, part: 'back', count: 1 } as const;

/** A child of five: hems so narrow that they are sewn flat. */
export const CHILD = {
  label: 'Child',
  ageYears: 5,
  height: 1100,
  waistGirth: 540,
  hipGirth: 600,
  hipDepth: 130,
  bodyRise: 190,
  insideLeg: 480,
  ankleGirth: 170,
  footEntryGirth: 210,
} as const;

/**
 * Combinations of the choices on which the order of work depends, with a few words to name them: every three choices
 * together, or with `LEGWORK_EVERY=1` each of the thousands once. The leg is drafted once and finished anew for each.
 *
 * @param body parts of the project that make the leg
 * @param hems which hems
 */
export function* everyGarment(
  body: Parts = {},
  hems: readonly (typeof HEM_FINISHES)[number][] = HEM_FINISHES,
): Generator<readonly [string, Garment]> {
  const result = draft(projectWithParts({ paper: { sheet: 'A0' }, ...body }));
  if (!result.ok) throw new Error(result.problems.map((problem) => printProblem(problem, 'cm')).join('\n'));
  const drafted = result.value;
  const base = garmentOf(drafted);
  const all = combinations({ ...CHOICES, hem: hems });
  for (const one of covering(all, (chosen) => Object.entries(chosen).map(([key, value]) => `${key}=${value}`), 3)) {
    const { kind, machine, finish, rawEdge, elastic, rows, hem, turnUnder, pocket } = one;
    // Whether a cord is sewn of the cloth has nothing to do with a pocket, nor has the fork's tip, so they vary together.
    const cord = pocket ? 'ofCloth' : 'bought';
    const project = projectWithParts({
      ...body,
      waist: { finish, rawEdge, elastic, rows, cord },
      hem: { finish: hem, turnUnder, cord },
      pocket: pocket ? POCKET : null,
      cloth: { piecedTip: pocket ? 30 : 0 },
    });
    const choices = {
      ...project,
      hem: hemOf(project),
      growth: growthFor(base.cloth),
      hipGirth: drafted.body.hipGirth,
      piecedTip: project.cloth.piecedTip,
      words: { title: '', label: '' },
    };
    const finished = finishLeg(drafted.leg, casingHeights(choices.waist), choices);
    const garment: Garment = {
      ...base,
      machine,
      cloth: { ...base.cloth, kind },
      waist: choices.waist,
      hem: choices.hem,
      pocket: choices.pocket,
      finished,
      pieces: [...legPieces(finished), ...otherPieces(drafted.leg, finished, choices, drafted.body)],
      notions: notionsOf(drafted.leg, finished, choices, drafted.body),
    };
    yield [Object.values(one).join(' '), garment];
  }
}

const CHOICES = {
  kind: ['woven', 'knit'],
  machine: ['plain', 'serger'],
  finish: WAIST_FINISHES,
  rawEdge: ['overlocked', 'turnedUnder'],
  elastic: ['threaded', 'sewnOn'],
  rows: [1, 3],
  hem: HEM_FINISHES,
  turnUnder: [0, 10],
  pocket: [true, false],
} as const;
