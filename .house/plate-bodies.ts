/** What one plate shows: a body of our own invention, and what is unusual about it. */
export interface PlateBody {
  readonly name: string;
  readonly body: Readonly<Record<string, number | boolean>>;
  readonly rest?: object;
}

const of = (
  name: string,
  waist: number,
  hip: number,
  hipDepth: number,
  rise: number,
  insideLeg: number,
  more: Readonly<Record<string, number | boolean>> = {},
  rest: object = {},
): PlateBody => ({
  name,
  body: { waistGirth: waist, hipGirth: hip, hipDepth, bodyRise: rise, insideLeg, ...more },
  rest,
});

/**
 * Very different bodies, six to a plate: ordinary; full; slim, short or tall; children and lengths; bellies, bent and
 * sitting; cloths, shapes and sides.
 */
export const plateBodies: readonly (readonly PlateBody[])[] = [
  [
    of('average, waist at its natural height', 742, 1020, 208, 272, 758, { crotchLength: 715 }),
    of('average, waist at the navel', 852, 1018, 147, 198, 780, { crotchLength: 619 }),
    of('broad shoulders, flat hip, waist at the navel', 937, 1017, 170, 211, 845, { crotchLength: 620 }),
    of('small waist, full hip', 640, 1060, 215, 285, 770, { crotchLength: 760 }),
    of('straight figure, little waist', 860, 900, 195, 255, 740),
    of('short and rounded', 880, 1080, 190, 262, 640, { crotchLength: 740 }),
  ],
  [
    of('full abdomen, waist larger than hip', 1180, 1090, 190, 285, 770, { crotchLength: 780 }),
    of('very full abdomen', 1380, 1240, 200, 300, 740),
    of('high hip fuller than hip', 930, 1040, 210, 275, 760, { highHipGirth: 1085 }),
    of('very full seat', 760, 1180, 235, 300, 780, { crotchLength: 860 }),
    of('flat seat, short crotch length', 820, 960, 190, 265, 790, { crotchLength: 625 }),
    of('largest', 1500, 1620, 245, 340, 760),
  ],
  [
    of('very slim', 600, 800, 185, 245, 830),
    of('tall', 800, 1020, 225, 300, 960, { crotchLength: 740 }),
    of('short', 720, 940, 180, 240, 610),
    of('long rise, short legs', 760, 1000, 235, 315, 660),
    of('low seat: hip almost at the crotch', 930, 1000, 235, 240, 800, { crotchLength: 640 }),
    of('strong thighs, measured front', 790, 1040, 200, 262, 770, {
      crotchLength: 720,
      frontCrotchLength: 318,
      thighGirth: 690,
      kneeGirth: 430,
    }),
  ],
  [
    of('two years, with a nappy', 470, 490, 85, 150, 340, {
      ageYears: 2,
      nappy: true,
      height: 870,
      kneeGirth: 210,
      footEntryGirth: 190,
    }),
    of('four years', 500, 540, 95, 160, 420, { ageYears: 4, height: 1030, kneeGirth: 225, footEntryGirth: 205 }),
    of('eight years', 560, 650, 125, 185, 580, { ageYears: 8, height: 1280, kneeGirth: 270, footEntryGirth: 245 }),
    of('twelve years', 640, 790, 155, 220, 720, { ageYears: 12, height: 1520, kneeGirth: 330, footEntryGirth: 290 }),
    of(
      'average, cropped below the knee',
      742,
      1020,
      208,
      272,
      758,
      { crotchLength: 715 },
      { leg: { spread: 12.7, length: 'belowKnee' } },
    ),
    of(
      'average, short, block shape',
      742,
      1020,
      208,
      272,
      758,
      { crotchLength: 715 },
      { leg: { spread: 12.7, length: 'short', shape: 'block' } },
    ),
  ],
  [
    of('belly, measured crotch', 1080, 1030, 195, 268, 770, { highHipGirth: 1060, crotchLength: 720 }),
    of(
      'pregnant, waist at its fullest',
      1120,
      1040,
      205,
      270,
      760,
      { highHipGirth: 1090 },
      { fit: { prominentAbdomen: 20 }, cloth: { kind: 'knit', stretch: 0.4 } },
    ),
    of('stooped: long behind, short in front', 900, 1000, 190, 258, 740, { crotchLength: 700, frontCrotchLength: 300 }),
    of('worn sitting', 880, 1010, 195, 265, 760, { crotchLength: 720 }, { fit: { seated: 40 } }),
    of('tall and thin', 740, 900, 215, 285, 930),
    of('short and stout', 1000, 1120, 185, 262, 640),
  ],
  [
    of('three years', 510, 540, 90, 160, 400, { ageYears: 3, height: 960 }),
    of(
      'knit, full length',
      742,
      1020,
      208,
      272,
      758,
      {},
      { cloth: { kind: 'knit', stretch: 0.4 }, block: { hipEase: 0 }, leg: { spread: 12.7 } },
    ),
    of('palazzo: a hem of 90 cm', 742, 1020, 208, 272, 758, {}, { leg: { shape: { hemGirth: 900 } } }),
    of('shorts', 742, 1020, 208, 272, 758, {}, { leg: { length: 'short' } }),
    of(
      'left and right differ',
      820,
      1040,
      205,
      270,
      760,
      {},
      { sides: { left: { longerLeg: 15, higherHip: 12 }, right: { fullerSeat: 20 } } },
    ),
    of('tip of the fork pieced', 742, 1020, 208, 272, 758, {}, { cloth: { piecedTip: 50 } }),
  ],
];
