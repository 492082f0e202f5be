import { type Draft, draft, exampleProject, type Project } from '../../src/project';
import { printProblem } from '../../src/words';

/** What a test changes about the example: whole fields, and parts of its body, cloth, leg, edges and paper. */
export interface Changes {
  readonly name?: string;
  readonly units?: Project['units'];
  readonly body?: Partial<Project['body']>;
  readonly cloth?: Partial<Project['cloth']>;
  readonly leg?: Partial<Project['leg']>;
  readonly waist?: Partial<Project['waist']>;
  readonly hem?: Partial<Project['hem']>;
  readonly pocket?: Project['pocket'];
  readonly sides?: Project['sides'];
  readonly paper?: Partial<Project['paper']>;
  readonly projector?: Partial<Project['projector']>;
}

/** The workbench's example project, changed. */
export const projectWith = (changes: Changes = {}): Project => ({
  ...exampleProject,
  ...changes,
  body: { ...exampleProject.body, ...changes.body },
  cloth: { ...exampleProject.cloth, ...changes.cloth },
  leg: { ...exampleProject.leg, ...changes.leg },
  waist: { ...exampleProject.waist, ...changes.waist },
  hem: { ...exampleProject.hem, ...changes.hem },
  paper: { ...exampleProject.paper, ...changes.paper },
  projector: { ...exampleProject.projector, ...changes.projector },
});

/** A project's draft; throws where it is refused, for no test here means to be. */
export function draftOf(project: Project): Draft {
  const result = draft(project);
  if (result.ok) return result.value;
  throw new Error(result.problems.map((problem) => printProblem(problem, 'cm')).join('\n'));
}

/** The changed example's draft. */
export const draftWith = (changes: Changes = {}): Draft => draftOf(projectWith(changes));
