import type { MeasurementKey } from '../../../body';

/** Trousers laid flat, the front up, in a frame of 100 × 170. */
const SIDE = 'M28 8C24 24 20 34 20 44L14 158';
const OUTLINE = `${SIDE}H42L50 66L58 158H86L80 44C80 34 76 24 72 8Z`;
const CENTRE = 'M50 8V66';
const INSEAM = 'M50 66L42 158';
const ACROSS_THE_SEAT = 'M20 44H80';
const TO_THE_FLOOR = 'M8 166H92';

/** Where the tape goes on trousers for what was not measured on the body, and what it is known by there. */
const ON_TROUSERS: Partial<Readonly<Record<MeasurementKey, { readonly tape: string; readonly beside?: string }>>> = {
  waistGirth: { tape: 'M28 8H72' },
  hipGirth: { tape: ACROSS_THE_SEAT },
  hipDepth: { tape: 'M28 8C24 24 20 34 20 44', beside: ACROSS_THE_SEAT },
  bodyRise: { tape: `${SIDE}${INSEAM}` },
  insideLeg: { tape: INSEAM, beside: TO_THE_FLOOR },
  trouserInseam: { tape: INSEAM },
  crotchLength: { tape: CENTRE, beside: 'M50 66C54 60 55 20 54 8' },
  frontCrotchLength: { tape: CENTRE },
  outsideLeg: { tape: SIDE, beside: TO_THE_FLOOR },
};

export const hasTrousersPicture = (key: MeasurementKey): boolean => ON_TROUSERS[key] !== undefined;

/** Trousers that fit, laid flat, with the tape where it goes. */
export function TrousersPicture({ measurement }: { readonly measurement: MeasurementKey }) {
  const { tape, beside } = ON_TROUSERS[measurement] ?? {};
  return (
    <svg className="how-picture" aria-hidden="true" viewBox="0 0 100 170">
      <path className="figure-ground" d={OUTLINE} />
      <path className="figure" d={OUTLINE} />
      <path className="figure-soft" d={`${CENTRE}M28.6 13H71.4`} />
      {beside && <path className="tape tape-behind" d={beside} />}
      {tape && <path className="tape tape-lit" d={tape} />}
    </svg>
  );
}
