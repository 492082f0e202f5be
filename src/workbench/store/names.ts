import type { Project } from '../../project';
import { own, said, say } from '../../words';

/** What a project is called that nobody has named. */
export const UNNAMED = say`My lounge pant`;

/** What it is called when somebody said who it is for. */
const nameFor = (wearer: string): string =>
  wearer.trim() === '' ? said(UNNAMED) : said(say`Lounge pant for ${own(wearer.trim())}`);

/** A changed project under the name of its wearer, where one is given anew and nobody has named the project by hand. */
export function namedForWearer(before: Project, after: Project): Project {
  const { label } = after.body;
  if (label === before.body.label || before.name !== nameFor(before.body.label)) return after;
  return { ...after, name: nameFor(label) };
}
