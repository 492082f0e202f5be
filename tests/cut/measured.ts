import { checksOf, draft, type Project } from '../../src/project';
import { ONE_SHEET, projectFor } from '../outside/survey';
import { type Figures, figuresOf } from './figures';
import type { Group, Person } from './people';

/** One person's draft, as figures and verdicts. */
interface Row {
  readonly id: string;
  readonly body: Project['body'];
  readonly figures: Figures;
  /** Each check's verdict by its id. */
  readonly verdicts: Readonly<Record<string, string>>;
}

/** A group, drafted. */
export interface Measured {
  readonly name: string;
  readonly rows: readonly Row[];
  /** Who is refused, and for which fields. */
  readonly refused: readonly string[];
}

/** Drafts everybody of a group with the choices of a new project. */
export function measured({ name, people }: Group): Measured {
  const rows: Row[] = [];
  const refused: string[] = [];
  for (const person of people) {
    const row = rowOf(person);
    if (typeof row === 'string') refused.push(row);
    else rows.push(row);
  }
  return { name, rows, refused };
}

function rowOf(person: Person): Row | string {
  const result = draft(projectFor(person.body, ONE_SHEET));
  if (!result.ok) return `${person.id}: ${result.problems.map(({ field }) => field).join(', ')}`;
  const { value } = result;
  return {
    id: person.id,
    body: person.body,
    figures: figuresOf(value, person),
    verdicts: Object.fromEntries(checksOf(value).map(({ id, verdict }) => [id, verdict])),
  };
}
