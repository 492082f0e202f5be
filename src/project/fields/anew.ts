import { MM_PER_INCH, type Mm, type Units } from '../../length';
import { FIELDS } from './fields';
import { type Field, usualValue } from './kinds';
import type { Choices, FieldPath, GroupName } from './paths';

const inches = (count: number): Mm => count * MM_PER_INCH;

/**
 * Where a project or a part of it begins anew it holds what people who measure so call a round number, and what their
 * shops sell: elastic of 2.5 cm or of 1 in. A file that leaves such a field out keeps what that always meant.
 *
 * @source practice
 */
const ROUND: Readonly<Partial<Record<FieldPath, Readonly<Record<Units, Mm>>>>> = {
  'block.hipEase': { cm: 50, inch: inches(2) },
  'block.waistEase': { cm: 25, inch: inches(1) },
  'block.balance': { cm: 10, inch: inches(3 / 8) },
  'cloth.width': { cm: 1500, inch: inches(60) },
  'leg.spread': { cm: 25, inch: inches(1) },
  'waist.elasticWidth': { cm: 25, inch: inches(1) },
  'waist.turnOfCloth': { cm: 3, inch: inches(1 / 8) },
  'waist.cordWidth': { cm: 10, inch: inches(3 / 8) },
  'waist.bandHeight': { cm: 60, inch: inches(2.5) },
  'hem.depth': { cm: 30, inch: inches(1.25) },
  'hem.elasticWidth': { cm: 12, inch: inches(1 / 2) },
  'hem.cordWidth': { cm: 6, inch: inches(1 / 4) },
  'hem.bandHeight': { cm: 60, inch: inches(2.5) },
  'pocket.width': { cm: 150, inch: inches(6) },
  'pocket.height': { cm: 165, inch: inches(6.5) },
  'pocket.facing': { cm: 30, inch: inches(1.25) },
  'projector.line': { cm: 1.5, inch: inches(1 / 8) / 2 },
  'paper.margin': { cm: 10, inch: inches(3 / 8) },
  'paper.overlap': { cm: 10, inch: inches(3 / 8) },
  'paper.ownWidth': { cm: 900, inch: inches(36) },
  'paper.ownHeight': { cm: 1500, inch: inches(60) },
};

/** What a field holds where it begins in a project of these units. */
export const valueAnew = (path: string, field: Field, units: Units): number | string | boolean | undefined =>
  ROUND[path as FieldPath]?.[units] ?? usualValue(field, units);

/** What a group holds where it begins in a project of these units. */
export function groupAnew<Group extends GroupName>(group: Group, units: Units): Choices[Group];
export function groupAnew(group: GroupName, units: Units): object {
  return Object.fromEntries(
    Object.entries(FIELDS[group]).flatMap(([key, field]) => {
      const value = valueAnew(`${group}.${key}`, field, units);
      return value === undefined ? [] : [[key, value]];
    }),
  );
}
