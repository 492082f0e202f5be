import type { Point } from '../../plane';

/** A mark, and which picture it is on where there are several. */
export interface MarkedPoint extends Point {
  readonly shot?: number;
}

/** A point on an edge between its landmarks; the edge has a corner there, or runs through it smoothly. */
export interface EdgePoint extends MarkedPoint {
  readonly corner?: boolean;
}

/** An edge as it was followed on a picture. */
export interface FollowedEdge {
  /** The marks that it was led through: it holds as long as the edge has just these. */
  readonly through: readonly EdgePoint[];
  /** From the first of them to the last; none where no line was to be seen. */
  readonly points: readonly EdgePoint[];
}

const isAt = (a: EdgePoint, b: EdgePoint): boolean => a.x === b.x && a.y === b.y && !a.corner === !b.corner;

/** Whether an edge was followed, with or without success, through just these marks. */
export const wasFollowed = (followed: FollowedEdge | undefined, marks: readonly EdgePoint[]): boolean =>
  followed !== undefined &&
  followed.through.length === marks.length &&
  followed.through.every((p, i) => isAt(p, marks[i] as EdgePoint));

/** The points of a followed edge; undefined where its marks are others by now, or no line was to be seen. */
export const followedThrough = (
  followed: FollowedEdge | undefined,
  marks: readonly EdgePoint[],
): readonly EdgePoint[] | undefined =>
  followed && followed.points.length > 1 && wasFollowed(followed, marks) ? followed.points : undefined;
