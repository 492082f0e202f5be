import * as v from 'valibot';
import { BLOCK_EDGES, LANDMARKS, MARKS_A_SHEET, MOST_SHEETS } from '../../trace';
import { LEAST_DOTS, MOST_DOTS, MOST_SHOTS, type PhotoWork, sidesOf } from './work';

const figure = v.pipe(v.number(), v.finite());
const whole = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(MOST_SHOTS - 1));
const markNumber = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(MARKS_A_SHEET * MOST_SHEETS));
const point = v.looseObject({ x: figure, y: figure, shot: v.optional(whole) });
const shot = v.looseObject({
  name: v.string(),
  width: figure,
  height: figure,
  corners: v.strictTuple([point, point, point, point]),
  rectangle: v.picklist(['sheet', 'own', 'none', 'scan']),
  dots: v.optional(v.pipe(figure, v.minValue(LEAST_DOTS), v.maxValue(MOST_DOTS))),
  across: figure,
  along: figure,
  check: v.optional(v.looseObject({ ends: v.strictTuple([point, point]), length: figure })),
  joins: v.optional(v.record(v.string(), point)),
  found: v.optional(
    v.array(v.looseObject({ number: markNumber, corners: v.strictTuple([point, point, point, point]) })),
  ),
});
const part = v.looseObject({
  shot: whole,
  byHand: v.optional(v.array(v.picklist(BLOCK_EDGES))),
  marks: v.looseObject({
    landmarks: v.record(v.picklist(LANDMARKS), point),
    kneeless: v.optional(v.boolean()),
    points: v.record(v.picklist(BLOCK_EDGES), v.array(point)),
    followed: v.optional(
      v.record(v.picklist(BLOCK_EDGES), v.looseObject({ through: v.array(point), points: v.array(point) })),
    ),
  }),
});
const work = v.looseObject({
  shots: v.pipe(v.array(shot), v.maxLength(MOST_SHOTS)),
  front: part,
  back: part,
});

/** Whether what was kept is what somebody marked on photographs, and can be shown. */
export const isWork = (value: unknown): value is PhotoWork =>
  v.is(work, value) && value.shots.every((one) => Number.isFinite(sidesOf(one as PhotoWork['shots'][number]).across));
