import { measuredOf, measurements } from '../../../src/body';
import type { ClassTable } from '../../../src/files';
import { readClass } from '../../../src/files/class/read-class';
import type { Project } from '../../../src/project';
import { printProblem } from '../../../src/words';
import { projectWith } from '../drafts';

/** A table read with the example's design, or a sentence for each reason why not. */
export function tableOf(text: string | Uint8Array, project: Project = projectWith()): ClassTable | readonly string[] {
  const read = readClass(typeof text === 'string' ? new TextEncoder().encode(text) : text, project);
  return read.ok ? read.value : read.problems.map((problem) => printProblem(problem, project.units));
}

/** The same, where it must be read. */
export function readTableOf(text: string | Uint8Array, project?: Project): ClassTable {
  const table = tableOf(text, project);
  if ('rows' in table) return table;
  throw new Error(table.join('\n'));
}

/** The bodies of a table, without those that can't be drafted. */
export const bodiesOf = ({ rows }: ClassTable): readonly Project['body'][] =>
  rows.flatMap(({ project }) => (project.ok ? [project.value.body] : []));

/** All that is wrong with a table's rows, a sentence each. */
export const problemsOf = ({ rows }: ClassTable): readonly string[] =>
  rows.flatMap(({ project }) => (project.ok ? [] : project.problems.map((problem) => printProblem(problem, 'cm'))));

/** The measurements of a body in the order of the catalogue, for comparing. */
export const figuresOf = (body: Project['body']): readonly (number | undefined)[] =>
  measurements.map(({ key }) => measuredOf(body)[key]);
