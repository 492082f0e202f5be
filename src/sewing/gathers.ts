import { sewnStretch } from '../edges';
import type { Mm } from '../length';
import { mm, type Phrase, say } from '../words';
import { lengthOf, sewingFacts } from './facts';
import { type Garment, pieceOfKind } from './garment';
import { makeStep } from './make-step';
import type { SewingStep } from './step';
import { setting } from './stitches';
import { PER_METRE, timeOf } from './time';

/** An edge so much longer than its ring is eased in without gathers. @source practice */
const EASED = 1.03;

/** What a knit ring that is sewn on has to do: how far it can be stretched, and how long the edge is it is sewn to. */
interface Fullness {
  readonly reach: Mm;
  readonly edge: Mm;
}

/** How far a ring of rib or knit reaches round one hem, or round the waist, when it is sewn; undefined where there is none. */
function fullnessAt(g: Garment, at: 'waist' | 'hem'): Fullness | undefined {
  const { waist, hem } = g;
  if (at === 'hem' && hem.finish === 'ribCuff') {
    const round = lengthOf(pieceOfKind(g, 'cuff'), ['upper']);
    return { reach: round * sewnStretch(hem.ribStretch), edge: sewingFacts(g).hemRound };
  }
  if (at === 'waist' && waist.finish === 'knitBand') {
    const round = lengthOf(pieceOfKind(g, 'waistBand'), ['upper']);
    return { reach: round * sewnStretch(waist.bandStretch), edge: sewingFacts(g).waistRound };
  }
  return undefined;
}

/** How long an edge is when the ring is sewn to it: gathered to what the ring reaches, where it is longer. */
export function gatheredTo(g: Garment, at: 'waist' | 'hem'): Mm | undefined {
  const fullness = fullnessAt(g, at);
  return fullness && fullness.edge > EASED * fullness.reach ? fullness.reach : undefined;
}

/** What becomes of the gathering threads once the ring is sewn on. */
export const threadsOut = (g: Garment, at: 'waist' | 'hem'): readonly Phrase[] =>
  gatheredTo(g, at) === undefined ? [] : [say`Pull out whatever is still seen of the gathering threads.`];

const LONG_STITCH = setting(say`Stitch`, say`straight, 4 to 5 mm long, upper tension loosened`);

/** Gathers for an edge that is longer than its ring can be stretched; none where stretching is enough. */
export function gatherSteps(g: Garment, at: 'waist' | 'hem'): readonly SewingStep[] {
  const to = gatheredTo(g, at);
  if (to === undefined) return [];
  const ring = at === 'hem' ? say`cuff` : say`band`;
  const edge = at === 'hem' ? say`each hem` : say`the waist`;
  const { hemRound, waistRound } = sewingFacts(g);
  const length = at === 'hem' ? hemRound : waistRound;
  return [
    makeStep({
      id: `${at}.gathers`,
      part: at === 'hem' ? 'hems' : 'waist',
      title: at === 'hem' ? say`Gather the hems` : say`Gather the waist`,
      tasks: [
        say`Mark ${edge} in quarters.`,
        say`Sew two rows of long stitches on the plain machine, all round inside the allowance, one close to the stitching line. Leave long threads at both ends.`,
        say`Pull both bobbin threads together until ${edge} is ${mm(to)} round, knot them, and share the gathers out from quarter to quarter.`,
      ],
      why: say`The edge is ${mm(length)} round, and the ${ring} reaches ${mm(to)} when it is stretched as far as a seam should be.`,
      settings: [LONG_STITCH],
      check: say`The gathers are even, and ${edge} is as long as the stretched ${ring}.`,
      time: timeOf(10, at === 'hem' ? 4 * length : 2 * length, PER_METRE.thread),
      scene: at === 'hem' ? { view: 'hem', stage: 'gathered' } : { view: 'waist', stage: 'gathered' },
    }),
  ];
}
