import type { Place } from './photographed-floor';

/** A camera over the floor whose lens bends: where it sees a place of the floor, and the way back. Nothing of ours is used. */
export interface LensOverFloor {
  readonly toPicture: (onFloor: Place) => Place;
  readonly toFloor: (onPicture: Place) => Place;
}

export interface Standing {
  readonly width: number;
  readonly height: number;
  /** The place looked at, and how far away the lens is. */
  readonly middle: Place;
  readonly away: number;
  /** Off the plumb line, in which direction, and how the camera is held; radians. */
  readonly tilt: number;
  readonly azimuth: number;
  readonly roll: number;
  /** By what share the corners of the picture are drawn out (+) or in (−). */
  readonly bend: number;
}

/**
 * @source A. W. Fitzgibbon, *Simultaneous linear estimation of multiple view geometry and lens distortion*, 2001: the
 *   division model, from memory; its form is another than the one that the program fits
 */
export function lensOverFloor({ width, height, middle, away, tilt, azimuth, roll, bend }: Standing): LensOverFloor {
  const focal = 0.75 * Math.max(width, height);
  const half = Math.hypot(width, height) / 2;
  // At the corners straight r becomes r·(1 + bend).
  const k = bend / half ** 2;
  const [ct, st, ca, sa, cr, sr] = [
    Math.cos(tilt),
    Math.sin(tilt),
    Math.cos(azimuth),
    Math.sin(azimuth),
    Math.cos(roll),
    Math.sin(roll),
  ];
  return {
    toPicture({ x, y }) {
      const [dx, dy] = [x - middle.x, y - middle.y];
      const [u, v] = [dx * ca + dy * sa, -dx * sa + dy * ca];
      const depth = away + v * st;
      const [px, py] = [(focal * u) / depth, (focal * v * ct) / depth];
      const straight = Math.hypot(px, py);
      const root = 1 - 4 * k * straight * straight;
      const drawn = straight === 0 || k === 0 ? 1 : (1 - Math.sqrt(Math.max(0, root))) / (2 * k * straight * straight);
      return { x: width / 2 + drawn * (px * cr - py * sr), y: height / 2 + drawn * (px * sr + py * cr) };
    },
    toFloor({ x, y }) {
      const [qx, qy] = [x - width / 2, y - height / 2];
      const straight = 1 / (1 + k * (qx * qx + qy * qy));
      const [px, py] = [straight * (qx * cr + qy * sr), straight * (-qx * sr + qy * cr)];
      const v = (py * away) / (focal * ct - py * st);
      const u = (px * (away + v * st)) / focal;
      return { x: middle.x + u * ca - v * sa, y: middle.y + u * sa + v * ca };
    },
  };
}
