import { say } from '../words';
import { lengthOf } from './facts';
import type { Garment } from './garment';
import { makeStep } from './make-step';
import { seamPace, seamSettings, seamSewn, seamTold } from './seams';
import type { SewingStep } from './step';
import { timeOf } from './time';

/** The fork's tip sewn on again, where it was cut off: the first seam, after which each leg is whole. */
export function tipSteps(g: Garment): readonly SewingStep[] {
  const { pieced } = g.finished;
  if (!pieced) return [];
  const bare = g.allowances.inseam === 0;
  return [
    makeStep({
      id: 'fork-tip',
      part: 'flat',
      title: say`Sew the fork’s tip on`,
      tasks: [
        bare
          ? say`Lay the tip on the back of its leg, right sides together, its long straight edge on that of the leg. The wider end is the crotch’s.`
          : say`Lay the tip on the back of its leg, right sides together, its long straight edge on that of the leg: the notches meet, and so do both ends of the raw edges. The wider end is the crotch’s.`,
        bare ? say`Pin it at both ends.` : say`Pin it at both ends and at the notch.`,
        ...seamTold(g, g.allowances.inseam),
        say`Open it out and press both allowances towards the tip.`,
      ],
      why: say`Sewn on first, it lies flat; its allowances, pressed that way, are held by the inseam and the crotch seam later. From here on the leg is one piece.`,
      settings: seamSettings(g),
      check: say`Inseam and crotch edge run on across the seam without a step, and the two legs are mirror images.`,
      ...seamSewn(g, 'piecing'),
      care: say`Press on the wrong side, and hold the narrow point with a pin, not with your fingers.`,
      time: timeOf(4, 2 * lengthOf(pieced.tip, ['piecing']), seamPace(g)),
      scene: { view: 'forkTip' },
    }),
  ];
}
