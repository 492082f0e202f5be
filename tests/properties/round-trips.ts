import { expect } from 'vitest';
import { prepareBody } from '../../src/body';
import { exactText, parseLength, type Units } from '../../src/length';
import { openProject, type Project, saveProject } from '../../src/project';
import { checkedProject } from '../../src/project/schema';
import { netLeg } from './net';
import { farthestMove } from './outlines';

/**
 * A project saved and opened is the same project, unknown fields too, and the second file the same to the letter; one
 * beyond the limits is refused with the same problems.
 */
export function savedIsTheSame(project: Project): void {
  const opened = openProject(saveProject(project));
  const { problems } = checkedProject(project);
  if (problems.length > 0) {
    expect(opened).toEqual({ ok: false, problems });
    return;
  }
  expect(opened).toEqual({ ok: true, value: project, notes: [] });
  if (opened.ok) expect(saveProject(opened.value)).toBe(saveProject(project));
}

/** A project whose defaults were filled in once has nothing left to fill in. */
export function normalisedOnce(project: Project): void {
  const once = checkedProject(project).project;
  expect(checkedProject(once).project).toEqual(once);
}

/** A body whose estimates are taken for measurements gives the same body and the same leg. */
export function estimatesHold(project: Project): boolean {
  const own = netLeg(project);
  if (!own) return false;
  const filled = Object.fromEntries(own.body.estimates.map(({ key, value }) => [key, value]));
  const completed = { ...project, body: { ...project.body, ...filled } };
  const { estimates, remarks: _, ...figures } = prepareBody(completed.body);
  const { estimates: __, remarks: ___, ...before } = own.body;
  expect(estimates).toEqual([]);
  expect(figures).toEqual(before);
  const again = netLeg(completed);
  expect(again).toBeDefined();
  if (again) expect(farthestMove(own.outline, again.outline)).toBe(0);
  return true;
}

/** A file shows a length to 0.05 mm, so that a dozen of them may move a place of the leg by this. */
const MOST_BY_TYPING = 0.5;

/** A body as it reads after all its lengths were typed as a table holds them. */
const typed = (body: Project['body'], units: Units): Project['body'] =>
  Object.fromEntries(
    Object.entries(body).map(([key, value]) => {
      if (typeof value !== 'number' || key === 'ageYears') return [key, value];
      const parsed = parseLength(exactText(value, units), units);
      return [key, parsed.ok ? parsed.mm : Number.NaN];
    }),
  ) as unknown as Project['body'];

/**
 * A body typed in either unit is the same body: the leg moves by less than a pencil line, and typing what the table
 * then holds changes nothing any more.
 *
 * @returns the farthest move; undefined where the leg is refused
 */
export function unitsRoundTrip(project: Project, units: Units): number | undefined {
  const own = netLeg(project);
  const body = typed(project.body, units);
  expect(typed(body, units)).toEqual(body);
  const again = netLeg({ ...project, body });
  if (!own || !again) return undefined; // a limit may lie in between
  const move = farthestMove(own.outline, again.outline);
  expect(move, units).toBeLessThanOrEqual(MOST_BY_TYPING);
  return move;
}

/** The unit that a project is kept in is no measure: in the other it is the same leg. */
export function unitIsNoMeasure(project: Project): boolean {
  const own = netLeg(project);
  const other = netLeg({ ...project, units: project.units === 'inch' ? 'cm' : 'inch' });
  expect(other === undefined).toBe(own === undefined);
  if (own && other) expect(farthestMove(own.outline, other.outline)).toBe(0);
  return own !== undefined;
}
