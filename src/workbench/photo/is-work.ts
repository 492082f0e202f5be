import * as v from 'valibot';
import { BLOCK_EDGES, LANDMARKS } from '../../trace';
import { type PhotoWork, sidesOf } from './work';

const figure = v.pipe(v.number(), v.finite());
const point = v.looseObject({ x: figure, y: figure });
const shot = v.looseObject({
  name: v.string(),
  width: figure,
  height: figure,
  corners: v.strictTuple([point, point, point, point]),
  rectangle: v.picklist(['sheet', 'own']),
  across: figure,
  along: figure,
  check: v.optional(v.looseObject({ ends: v.strictTuple([point, point]), length: figure })),
});
const part = v.looseObject({
  shot: v.picklist([0, 1]),
  marks: v.looseObject({
    landmarks: v.record(v.picklist(LANDMARKS), point),
    points: v.record(v.picklist(BLOCK_EDGES), v.array(point)),
  }),
});
const work = v.looseObject({
  shots: v.pipe(v.array(shot), v.maxLength(2)),
  front: part,
  back: part,
  allowances: v.looseObject({ waist: figure, crotch: figure, inseam: figure, hem: figure, side: figure }),
});

/** Whether what was kept is what somebody marked on photographs, and can be shown. */
export const isWork = (value: unknown): value is PhotoWork =>
  v.is(work, value) && value.shots.every((one) => Number.isFinite(sidesOf(one as PhotoWork['shots'][number]).across));
