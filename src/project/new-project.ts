import { MM_PER_INCH } from '../length';
import { exampleProject } from './example';
import { GROUPS, type GroupName, groupAnew, MAY_BE_NONE } from './fields';
import type { Habits } from './habits';
import { checkedProject } from './schema';
import type { Project } from './types';

/** The four measurements without which nothing can be drafted. */
export const NEEDED = ['waistGirth', 'hipGirth', 'bodyRise', 'insideLeg'] as const;

/**
 * A project with nothing chosen yet: every number round in its own unit, and the four measurements still those of the
 * example, which lets it be drafted until somebody has measured.
 */
export function newProject({ units, sheet }: Habits, name: string): Project {
  const { format, version, body } = exampleProject;
  const chosen = ([group, values]: readonly [GroupName, object]) =>
    [group, group === 'paper' ? { ...values, sheet } : values] as const;
  const groups = GROUPS.filter((group) => !group.includes('.') && !MAY_BE_NONE.includes(group));
  const needed = NEEDED.map((key) => [key, body[key]] as const);
  return checkedProject({
    format,
    version,
    name,
    units,
    body: { label: '', ...Object.fromEntries(needed) },
    ...Object.fromEntries(groups.map((group) => chosen([group, groupAnew(group, units)]))),
  }).project;
}

/** The same body as in centimetres, as an American tape has it. */
const BODY_IN_INCHES = {
  waistGirth: 29.25,
  hipGirth: 40.125,
  hipDepth: 8.25,
  bodyRise: 10.75,
  insideLeg: 29.875,
  crotchLength: 28.125,
};

/** The example for somebody of these habits: each number in it round where they read it. */
export function exampleOf(habits: Habits): Project {
  const { name, body, use, paper } = exampleProject;
  if (habits.units === 'cm') return { ...exampleProject, paper: { ...paper, sheet: habits.sheet } };
  const inches = Object.entries(BODY_IN_INCHES).map(([key, count]) => [key, count * MM_PER_INCH]);
  const anew = newProject(habits, name);
  return checkedProject({
    ...anew,
    body: { label: body.label, ...Object.fromEntries(inches) },
    use,
    block: { ...anew.block, hipEase: 2.25 * MM_PER_INCH },
    leg: { ...anew.leg, spread: MM_PER_INCH / 2 },
  }).project;
}
