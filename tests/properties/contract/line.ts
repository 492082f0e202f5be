import type { Case } from './cases';
import { missedBy, type Statement, told } from './statement';

/** One line of the contract. */
export interface Line {
  readonly name: string;
  /** It names the fit, so that blocks brought along have nothing to obey. */
  readonly fit?: true;
  /** What it says of a case; undefined where it can't be tried, since the changed leg is refused or is another kind. */
  readonly tried: (one: Case) => readonly Statement[] | undefined;
}

/** What became of a line over many cases. */
export interface Tried {
  compared: number;
  missed: number;
  worst: { readonly by: number; readonly text: string } | undefined;
}

/** Tries every line on every case. */
export function linesTried(lines: readonly Line[], all: Iterable<Case>): ReadonlyMap<string, Tried> {
  const book = new Map<string, Tried>(lines.map(({ name }) => [name, { compared: 0, missed: 0, worst: undefined }]));
  for (const one of all)
    for (const line of lines) {
      if (one.traced && line.fit) continue;
      const statements = line.tried(one);
      if (!statements) continue;
      const kept = book.get(line.name) as Tried;
      kept.compared += 1;
      const missed = statements.filter((statement) => missedBy(statement) > 0);
      if (missed.length === 0) continue;
      kept.missed += 1;
      const worst = missed.reduce((a, b) => (missedBy(b) > missedBy(a) ? b : a));
      if (missedBy(worst) > (kept.worst?.by ?? 0)) kept.worst = { by: missedBy(worst), text: failure(one, missed) };
    }
  return book;
}

/** Enough to draw the case again. */
function failure({ id, project }: Case, missed: readonly Statement[]): string {
  const { body, leg, block, fit } = project;
  const again = JSON.stringify({ body, leg, fit, block: block.source === 'drawn' ? 'traced as drafted' : undefined });
  return `${id}: ${missed.map(told).join('; ')}\n  ${again}`;
}

/** How a line came out, for the log and for the test's message. */
export const triedText = (name: string, { compared, missed, worst }: Tried): string =>
  missed === 0
    ? `${name}: held on all ${compared}`
    : `${name}: missed on ${missed} of ${compared}; farthest by ${worst?.by.toFixed(3)}, ${worst?.text}`;
