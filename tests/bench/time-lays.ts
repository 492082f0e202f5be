import { type ClothChoices, clothPlan, clothWidths, type Layout } from '../../src/cloth';
import { type Draft, draft } from '../../src/project';
import { benchProjects } from './bodies';
import { type Timing, timing } from './timing';

const LAYOUTS = ['single', 'foldedLengthwise', 'foldedCrosswise', 'best'] as const satisfies readonly (
  | Layout
  | 'best'
)[];
const WIDTHS = [900, 1120, 1500, 1800];
const WARM_UP = 40;
const POCKET = { width: 150, height: 165, facing: 30, part: 'back', count: 1 } as const;

/**
 * Times lays: the leg alone and with a casing and a pocket, on four widths in every layout, from finished pieces on; and
 * all widths side by side.
 *
 * @param bodies how many
 */
export function timeLays(bodies: number): readonly Timing[] {
  const plain = benchProjects(bodies).map((project) => ({ ...project, paper: { ...project.paper, sheet: 'A0' } }));
  const rich = plain.map((project) => ({
    ...project,
    pocket: POCKET,
    waist: { ...project.waist, finish: 'separateCasing' } as const,
  }));
  return [...lays('lay: two legs', plain.map(drafted)), ...lays('lay: legs, casing, pocket', rich.map(drafted))];
}

function drafted(project: Parameters<typeof draft>[0]): Draft {
  const result = draft(project);
  if (!result.ok) throw new Error('a bench body was refused');
  return result.value;
}

function lays(name: string, drafts: readonly Draft[]): readonly Timing[] {
  const times: number[] = [];
  const besideTimes: number[] = [];
  drafts.forEach(({ pieces, project }, i) => {
    WIDTHS.forEach((width, w) => {
      const layout = LAYOUTS[(i + w) % LAYOUTS.length] ?? 'best';
      const cloth: ClothChoices = { ...project.cloth, width, layout, oneWay: (i + w) % 3 === 0 };
      // Copies, so that nothing that was made of a piece before is found again.
      const fresh = pieces.map((piece) => ({ ...piece }));
      const start = performance.now();
      clothPlan(fresh, cloth);
      times.push(performance.now() - start);
    });
    const fresh = pieces.map((piece) => ({ ...piece }));
    const start = performance.now();
    clothWidths(fresh, project.cloth, 'cm');
    besideTimes.push(performance.now() - start);
  });
  return [timing(name, times.slice(WARM_UP)), timing(`${name}, all widths beside`, besideTimes.slice(WARM_UP / 4))];
}
