import type { Project } from '../../src/project';
import { checkedProject } from '../../src/project/schema';

/** A small seeded generator (Lehmer, multiplier 48271), so that every run times the same bodies. */
function randomFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

/**
 * Believable bodies, half of them with a measured crotch length, so that the costliest way through the draft is timed.
 *
 * @param count how many
 */
export function benchProjects(count: number): readonly Project[] {
  const random = randomFrom(20261124);
  const between = (low: number, high: number) => low + (high - low) * random();
  return Array.from({ length: count }, (_, i) => {
    const hipGirth = between(860, 1250);
    const bodyRise = between(225, 310);
    const crotch = 0.93 * bodyRise + 0.39 * hipGirth + 33 + between(-25, 45);
    const body = {
      label: `body ${i + 1}`,
      hipGirth,
      waistGirth: hipGirth - between(-40, 260),
      bodyRise,
      hipDepth: bodyRise * between(0.7, 0.8),
      insideLeg: between(680, 880),
      ...(i % 2 === 0 ? { crotchLength: crotch + 60 } : {}),
    };
    return checkedProject({
      format: 'legwork-project',
      version: 2,
      name: 'bench',
      body,
      leg: { spread: between(0, 40) },
    }).project;
  });
}
