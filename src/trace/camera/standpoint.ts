import type { Mm } from '../../length';
import type { Point } from '../../plane';
import type { ShotView } from './shot-view';

/** Where a camera stood: the point of the plane plumb below it, and how high above it, millimetres. */
export interface Standpoint {
  readonly foot: Point;
  readonly height: Mm;
}

/** A camera's focal length in halves of the diagonal: that of a telephone, and how many times longer or shorter most are. @source practice */
const USUAL = { focal: 1.2, times: 1.5 } as const;
/** What a homography by measured marks tells of the angles and lengths from which the focal length follows, to begin with. @source tolerance */
const TOLD = 0.01;
/** The focal lengths that are tried, as natural logarithms. @source tolerance */
const TRIED = { from: Math.log(0.4), to: Math.log(6), steps: 240 } as const;

/**
 * Where the camera stood, from the homography of its true lens: two directions of the plane at right angles and of one
 * length stay so in space, which tells the focal length; seen from straight above nothing tells it, and a usual one is taken.
 *
 * @source Z. Zhang, A flexible new technique for camera calibration, *IEEE PAMI* 22 (2000), for one view; from memory
 */
export function standpointOf({ seen }: ShotView): Standpoint {
  const [a, b, c, d, e, f, g, h, i] = seen;
  const inSpace = (focal: number) =>
    [
      [a / focal, d / focal, g],
      [b / focal, e / focal, h],
      [c / focal, f / focal, i],
    ] as const;
  const amiss = (logarithm: number) => {
    const [x, y] = inSpace(Math.exp(logarithm));
    const slant = inner(x, y) / (long(x) * long(y));
    const stretch = Math.log(long(x) / long(y));
    const unusual = (logarithm - Math.log(USUAL.focal)) / Math.log(USUAL.times);
    return (slant * slant + stretch * stretch) / (TOLD * TOLD) + unusual * unusual;
  };
  let best = Math.log(USUAL.focal);
  for (let step = 0; step <= TRIED.steps; step += 1) {
    const tried = TRIED.from + ((TRIED.to - TRIED.from) * step) / TRIED.steps;
    if (amiss(tried) < amiss(best)) best = tried;
  }
  const [x, y, t] = inSpace(Math.exp(best));
  const size = (long(x) + long(y)) / 2;
  const z = crossed(x, y);
  const upright = long(z);
  return {
    foot: { x: -inner(x, t) / (size * size), y: -inner(y, t) / (size * size) },
    height: Math.abs(inner(z, t)) / (upright * size),
  };
}

type Space = readonly [number, number, number];
const inner = (a: Space, b: Space): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const long = (a: Space): number => Math.sqrt(inner(a, a));
const crossed = (a: Space, b: Space): Space => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
