import { useMemo } from 'react';
import type { BlockEdge } from '../../block';
import type { Units } from '../../length';
import { pathLength } from '../../plane';
import { BLOCK_EDGES, blocksFromTrace, LANDMARKS, type TracedPair, tracedEdge } from '../../trace';
import { inside, mm, number, own, type Problem, printPhrase, Refusal, type Result, say, words } from '../../words';
import { useBench } from '../store/bench';
import { sentence } from '../store/refusal';
import { type ExactPair, exactSpots } from './exact-spots';
import { tracedBlocks } from './flat';
import { LengthsTable } from './LengthsTable';
import { usePhotoOpen } from './opened';
import { usePhoto } from './photo-store';
import { ENLARGED, TracedPreview } from './TracedPreview';
import { EDGE_NAMES, LANDMARK_WORDS } from './words';
import type { Part, PhotoWork } from './work';

/** The lengths of what was marked, to be compared with the paper; then the blocks are used. */
export function UseStep() {
  const work = usePhoto((state) => state.work);
  const units = useBench((state) => state.project.units);
  const traced = useMemo(() => tried(work), [work]);
  const exact = useMemo((): ExactPair | undefined => {
    if (!traced.ok) return undefined;
    const spots = (part: Part) => exactSpots(work, part, traced.value[part]);
    return { front: spots('front'), back: spots('back') };
  }, [work, traced]);
  const use = () => {
    if (!traced.ok) return;
    const told = say`The blocks of the photograph are on the table.`;
    const { project, takeBlocks } = useBench.getState();
    const { anew } = usePhotoOpen.getState();
    // Marked again, the same paper has the same allowances, and is trued as it was.
    const { allowances, trued } = project.block.source === 'photographed' && !anew ? project.block : {};
    takeBlocks(
      { source: 'photographed', ...traced.value, ...(allowances && { allowances }), ...(trued && { trued }) },
      told,
      anew,
    );
    usePhotoOpen.setState({ open: false });
  };
  return (
    <div className="photo-use">
      <div className="photo-use-words">
        <p className="field-help">{words`What of the paper is allowance is taken off afterwards, at Blocks, where the pair is trued, too.`}</p>
        {traced.ok && exact ? (
          <Lengths blocks={traced.value} exact={exact} />
        ) : (
          <ul className="field-problem" aria-label={words`What is missing`}>
            {missing(traced.ok ? [] : traced.problems, units).map((one) => (
              <li key={one}>{one}</li>
            ))}
          </ul>
        )}
        <button type="button" className="button button-main" disabled={!traced.ok} onClick={use}>
          <span className="take-name">{words`Use these blocks`}</span>
          <span className="take-what">{words`undo brings the others back`}</span>
        </button>
      </div>
      {traced.ok && exact && <TracedPreview blocks={traced.value} exact={exact} />}
    </div>
  );
}

/** Each problem in a sentence; many places of one block that are not marked are one. */
function missing(problems: readonly Problem[], units: Units): readonly string[] {
  return (['front', 'back'] as const).flatMap((part) => {
    const its = problems.filter(({ field }) => field.includes(part));
    const name = part === 'front' ? say`Front` : say`Back`;
    if (its.length > 3) return [words`${name}: ${number(its.length, 0)} places are still to be marked.`];
    return its.map(({ field, phrase }) => {
      const what = /(\w+)$/.exec(field)?.[1] ?? '';
      const landmark = LANDMARKS.find((one) => one === what);
      const edge = BLOCK_EDGES.find((one) => one === what);
      const where = landmark ? LANDMARK_WORDS[landmark].name : edge ? EDGE_NAMES[edge] : say`${own(what)}`;
      return sentence(printPhrase(say`${name}, ${inside(where)}: ${phrase}`, units));
    });
  });
}

/** How long each edge is, and how far off it may lie: one of them measured on the paper tells whether all is well. */
function Lengths({ blocks, exact }: { readonly blocks: TracedPair; readonly exact: ExactPair }) {
  const units = useBench((state) => state.project.units);
  const long = (part: Part, name: BlockEdge) => {
    const off = exact[part]?.edges[name];
    const told = mm(pathLength(tracedEdge(blocks[part], name)));
    return printPhrase(off === undefined ? say`${told}` : say`${told}, its place ± ${mm(off)}`, units);
  };
  return (
    <>
      <LengthsTable caption={words`Lengths: measure one on the paper`} lengthOf={long} />
      <p className="field-help">
        {words`After ± stands how far off an edge may lie where it is least sure. A circle in the picture is ${number(ENLARGED, 0)} times as large as its place may be off.`}
      </p>
    </>
  );
}

function tried(work: PhotoWork): Result<TracedPair> {
  try {
    const traced = tracedBlocks(work);
    // Refuses edges that don't meet; the body's rise doesn't matter for that.
    blocksFromTrace(traced.front, traced.back, 0);
    return { ok: true, value: traced };
  } catch (error) {
    if (error instanceof Refusal) return { ok: false, problems: error.problems };
    throw error;
  }
}
