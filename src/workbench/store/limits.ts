import { FIELD_LIMITS, type Limits, type ProjectPath } from '../../project';

/** Numbers of a project that nobody types on the screen: they are picked, drawn with a handle, or stand in files alone. */
const NOT_TYPED: ReadonlySet<string> = new Set<ProjectPath>(['block.crotchEase', 'leg.straighten', 'paper.scale']);

/** The limits of the fields into which a number is typed. */
export const TYPED_LIMITS: Readonly<Record<string, Limits>> = Object.fromEntries(
  Object.entries(FIELD_LIMITS).filter(([path]) => !NOT_TYPED.has(path)),
);
