import type { Project, Repair } from '../../src/project';

/**
 * Paths at which a project is not what its file says, and of which no repair speaks. What the file leaves out may be
 * filled in; whatever stands in it must be there, or be told.
 */
export function untold(text: string, project: Project, repairs: readonly Repair[]): readonly string[] {
  const told = repairs.map(({ problem }) => problem.field);
  const isTold = (path: string) =>
    told.some((field) => field === path || path.startsWith(`${field}.`) || field.startsWith(`${path}.`));
  const differing = (was: unknown, is: unknown, path: string): readonly string[] => {
    if (typeof was !== 'object' || was === null || typeof is !== 'object' || is === null)
      return JSON.stringify(was) === JSON.stringify(is) ? [] : [path];
    if (Array.isArray(was) !== Array.isArray(is) || (Array.isArray(was) && was.length !== (is as unknown[]).length))
      return [path];
    return Object.entries(was).flatMap(([key, value]) => {
      const here = path === '' ? key : `${path}.${key}`;
      // That a file is brought up to the newest version is told by a note of its own.
      if (here === 'version' && (value as number) < project.version) return [];
      return Object.hasOwn(is, key) ? differing(value, (is as Record<string, unknown>)[key], here) : [here];
    });
  };
  return differing(JSON.parse(text.replace(/^\ufeff/, '')), project, '').filter((path) => !isTold(path));
}
