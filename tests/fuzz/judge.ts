import { checksOf, draft, type Project, workingOf } from '../../src/project';
import { checkedProject } from '../../src/project/schema';
import { type Problem, UNSAID } from '../../src/words';
import { adviceOf, type Followed } from './advice';
import { type Find, find } from './find';
import { outlineFinds } from './outlines';
import { paperFinds } from './papers';
import type { RawDraw } from './projects';
import { seamFinds } from './seams';
import { refusalFinds, toldFinds } from './told';
import { wearFinds } from './wearable';

/** What came of one project. */
export interface Judged {
  readonly finds: readonly Find[];
  /** The first problem of a refusal: its field and its sentence without the values; undefined where it was drafted. */
  readonly refused: string | undefined;
  /** Of a refusal: what came of doing as it says. */
  readonly followed?: Followed;
  /** Processor time of the draft with its checks and its working. */
  readonly millis: number;
}

/** How closely a draw is looked at: whether it is drafted or refused, everything but its papers, or which of those too. */
export type Look = 'draft' | 'all' | { readonly papers: number };

/** A person waits no longer for a drawing. */
const SLOW = 1000;

/**
 * Judges a project by everything that must hold of every project.
 *
 * @param raw as a file would hold it
 * @param look how closely; sheets and files take long, and are made by turns
 */
export async function judged(raw: RawDraw, look: Look): Promise<Judged> {
  const began = process.cpuUsage();
  const spent = () => {
    const { user, system } = process.cpuUsage(began);
    return (user + system) / 1000;
  };
  let stage = 'draft';
  let millis: number | undefined;
  const finds: Find[] = [];
  try {
    const result = draft(raw as unknown as Project);
    if (!result.ok) {
      const { project } = checkedProject(raw);
      millis = spent();
      if (look === 'draft')
        return { finds: refusalFinds(result.problems, project), refused: reasonOf(result.problems), millis };
      stage = 'advice';
      const { finds: useless, followed } = adviceOf(project, result.problems);
      finds.push(...refusalFinds(result.problems, project), ...useless);
      return { finds, refused: reasonOf(result.problems), followed, millis };
    }
    const drafted = result.value;
    if (look === 'draft') return { finds, refused: undefined, millis: spent() };
    stage = 'checks';
    void checksOf(drafted);
    stage = 'working';
    workingOf(drafted);
    millis = spent();
    if (millis > SLOW) finds.push(find('slow', `${(millis / 1000).toFixed(1)} s`));
    for (const findsOf of [toldFinds, outlineFinds, seamFinds, wearFinds]) {
      stage = findsOf.name;
      finds.push(...findsOf(drafted));
      // Where there is no number nothing else can be measured.
      if (finds.some(({ kind }) => kind === 'not finite')) break;
    }
    stage = 'papers';
    if (typeof look === 'object') finds.push(...(await paperFinds(drafted, look.papers)));
  } catch (error) {
    finds.push(find(`fault in ${stage}`, error instanceof Error ? placeOf(error) : String(error)));
  }
  return { finds, refused: undefined, millis: millis ?? spent() };
}

/** What was thrown and where, in one line. */
function placeOf({ message, stack = '' }: Error): string {
  const place = stack.split('\n').find((line) => /\/(src|tests)\//.test(line)) ?? '';
  return `${message.split('\n')[0] ?? ''} ${place.trim().replace(/\(?\/?\S*\/((src|tests)\/)/, '$1')}`;
}

function reasonOf(problems: readonly Problem[]): string {
  const [{ field, phrase } = { field: 'nothing', phrase: UNSAID }] = problems;
  return `${field}: ${phrase.template}`;
}
