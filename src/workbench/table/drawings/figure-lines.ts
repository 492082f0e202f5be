import type { FigureShape } from './figure-shape';

/** One drawn part of a figure: closed ground, its outline, and the few soft lines that make it a body. */
export interface FigureLines {
  readonly grounds: readonly string[];
  readonly outlines: readonly string[];
  readonly soft: readonly string[];
  /** What it stands or sits on. */
  readonly furniture?: string;
}

/** Numbers of a path to a tenth: a picture needs no more. */
const text = (parts: TemplateStringsArray, ...values: readonly number[]): string =>
  parts.map((part, i) => part + (values[i] === undefined ? '' : Math.round(values[i] * 10) / 10)).join('');

/** One half seen from the front or the back, from the ribs down the outside, round the foot and up the inside. */
function halfOutline(f: FigureShape, s: 1 | -1): string {
  const { half, legAt, hipLevel: hip, crotchLevel: crotch, kneeLevel: knee, calfLevel: calf, ankleLevel: ankle } = f;
  const [thighLong, shin] = [knee - crotch, f.floor - knee];
  const x = (value: number) => s * value;
  const out = (at: number, by: number) => s * (at + by);
  const inn = (at: number, by: number) => s * (at - by);
  const { thigh: m0, knee: m1, ankle: m2 } = legAt;
  return [
    text`M${x(half.waist * 1.1)} ${-f.ribs}C${x(half.waist * 1.06)} ${-f.ribs * 0.6} ${x(half.waist * 0.98)} ${-f.ribs * 0.3} ${x(half.waist)} 0`,
    text`C${x(half.waist * 1.03)} ${hip * 0.35} ${x(half.hip)} ${hip * 0.5} ${x(half.hip)} ${hip}`,
    text`C${x(half.hip)} ${hip + 0.5 * (crotch - hip) + 0.1 * thighLong} ${out(m0, half.thigh * 1.02)} ${crotch + 0.12 * thighLong} ${out(m0, half.thigh * 0.97)} ${crotch + 0.26 * thighLong}`,
    text`C${out(m0, half.thigh * 0.88)} ${crotch + 0.58 * thighLong} ${out(m1, half.knee * 1.08)} ${knee - 0.18 * thighLong} ${out(m1, half.knee)} ${knee}`,
    text`C${out(m1, half.knee * 0.95)} ${knee + 0.1 * shin} ${out(m1, half.calf * 1.07)} ${calf - 0.08 * shin} ${out(m1, half.calf * 1.05)} ${calf}`,
    text`C${out(m1, half.calf)} ${calf + 0.26 * shin} ${out(m2, half.ankle * 1.04)} ${ankle - 0.16 * shin} ${out(m2, half.ankle)} ${ankle}`,
    text`C${out(m2, half.ankle * 1.08)} ${ankle + 30 * f.unit} ${out(m2, half.ankle * 1.6)} ${f.floor - 20 * f.unit} ${out(m2, half.ankle * 1.5)} ${f.floor - 6 * f.unit}`,
    text`Q${out(m2, half.ankle * 1.45)} ${f.floor} ${out(m2, half.ankle)} ${f.floor}L${inn(m2, half.ankle * 0.6)} ${f.floor}`,
    text`Q${inn(m2, half.ankle)} ${f.floor} ${inn(m2, half.ankle)} ${f.floor - 14 * f.unit}L${inn(m2, half.ankle)} ${ankle}`,
    text`C${inn(m2, half.ankle * 1.02)} ${calf + 0.32 * shin} ${inn(m1, half.calf)} ${calf + 0.2 * shin} ${inn(m1, half.calf)} ${calf + 0.05 * shin}`,
    text`C${inn(m1, half.calf)} ${calf - 0.12 * shin} ${inn(m1, half.knee * 0.95)} ${knee + 0.1 * shin} ${inn(m1, half.knee)} ${knee}`,
    text`C${inn(m1, half.knee * 1.02)} ${knee - 0.2 * thighLong} ${inn(m0, half.thigh * 0.9)} ${crotch + 0.45 * thighLong} ${inn(m0, half.thigh * 0.99)} ${crotch + 0.12 * thighLong}`,
    text`C${x(2 * f.unit)} ${crotch + 0.05 * thighLong} 0 ${crotch + 6 * f.unit} 0 ${crotch}`,
  ].join('');
}

const SIDES = [1, -1] as const;

function bothHalves(f: FigureShape): Pick<FigureLines, 'grounds' | 'outlines'> {
  const outlines = SIDES.map((s) => halfOutline(f, s));
  return { outlines, grounds: outlines.map((line) => `${line}V${Math.round(-f.ribs)}Z`) };
}

export function frontLines(f: FigureShape): FigureLines {
  const { half, legAt, hipLevel: hip, crotchLevel: crotch, kneeLevel: knee, unit: u } = f;
  const soft = SIDES.flatMap((s) => [
    text`M${s * half.hip * 0.74} ${hip * 0.55}Q${s * half.hip * 0.4} ${crotch * 0.84} ${s * 9 * u} ${crotch - 4 * u}`,
    text`M${s * (legAt.knee - half.knee * 0.5)} ${knee + 22 * u}q${s * half.knee * 0.5} ${16 * u} ${s * half.knee} 0`,
  ]);
  return { ...bothHalves(f), soft };
}

export function backLines(f: FigureShape): FigureLines {
  const { half, legAt, hipLevel: hip, crotchLevel: crotch, kneeLevel: knee, unit: u } = f;
  const soft = [
    text`M0 ${hip * 0.45}V${crotch}`,
    ...SIDES.flatMap((s) => [
      text`M${s * 5 * u} ${crotch + 2 * u}C${s * half.hip * 0.22} ${crotch + 26 * u} ${s * half.hip * 0.5} ${crotch + 24 * u} ${s * half.hip * 0.7} ${crotch + 4 * u}`,
      text`M${s * (legAt.knee - half.knee * 0.4)} ${knee - 4 * u}q${s * half.knee * 0.4} ${9 * u} ${s * half.knee * 0.8} 0`,
    ]),
  ];
  return { ...bothHalves(f), soft };
}

/** From the ribs down the front, as far as the fullest hip. */
export const bellyLine = ({ fore, hipLevel: hip }: FigureShape): string =>
  text`C${fore.waist * 1.06} ${hip * 0.35} ${fore.hip * 1.04} ${hip * 0.7} ${fore.hip} ${hip}`;

/** From the fullest hip up the back, as far as the waist. */
export const smallOfBackLine = ({ aft, hipLevel: hip }: FigureShape): string =>
  text`C${aft.hip} ${hip * 0.5} ${aft.waist * 0.96} ${hip * 0.35} ${aft.waist} 0`;

const chestLine = ({ fore, ribs }: FigureShape): string =>
  text`M${fore.waist * 1.04} ${-ribs}C${fore.waist * 1.08} ${-ribs * 0.6} ${fore.waist} ${-ribs * 0.25} ${fore.waist} 0`;

const backLine = ({ aft, ribs }: FigureShape): string =>
  text`C${aft.waist * 1.03} ${-ribs * 0.3} ${aft.waist * 1.2} ${-ribs * 0.7} ${aft.waist * 1.22} ${-ribs}`;

export function sideLines(f: FigureShape): FigureLines {
  const { fore, aft, hipLevel: hip, crotchLevel: crotch, kneeLevel: knee, calfLevel: calf, ankleLevel: ankle } = f;
  const { floor, heel, toe, unit: u } = f;
  const [thighLong, shin] = [knee - crotch, floor - knee];
  const outline = [
    chestLine(f),
    bellyLine(f),
    text`C${fore.hip * 0.97} ${hip + 0.6 * (crotch - hip)} ${fore.thigh * 1.05} ${crotch} ${fore.thigh} ${crotch + 0.2 * thighLong}`,
    text`C${fore.thigh * 0.94} ${crotch + 0.6 * thighLong} ${fore.knee * 1.05} ${knee - 0.2 * thighLong} ${fore.knee} ${knee}`,
    text`C${fore.knee * 0.94} ${knee + 0.12 * shin} ${fore.calf} ${calf - 0.06 * shin} ${fore.calf} ${calf}`,
    text`C${fore.calf * 0.96} ${calf + 0.25 * shin} ${fore.ankle} ${ankle - 0.2 * shin} ${fore.ankle} ${ankle}`,
    text`C${fore.ankle + 8 * u} ${ankle + 30 * u} ${toe * 0.6} ${floor - 34 * u} ${toe * 0.86} ${floor - 24 * u}`,
    text`Q${toe} ${floor - 18 * u} ${toe} ${floor - 8 * u}Q${toe} ${floor} ${toe - 12 * u} ${floor}H${heel + 14 * u}`,
    text`Q${heel} ${floor} ${heel} ${floor - 18 * u}C${heel} ${ankle + 34 * u} ${aft.ankle} ${ankle + 24 * u} ${aft.ankle} ${ankle}`,
    text`C${aft.ankle} ${ankle - 0.22 * shin} ${aft.calf} ${calf + 0.24 * shin} ${aft.calf} ${calf}`,
    text`C${aft.calf} ${calf - 0.14 * shin} ${aft.knee} ${knee + 0.08 * shin} ${aft.knee} ${knee}`,
    text`C${aft.knee} ${knee - 0.25 * thighLong} ${aft.thigh} ${crotch + 0.5 * thighLong} ${aft.thigh} ${crotch + 0.17 * thighLong}`,
    text`C${aft.thigh} ${crotch + 0.04 * thighLong} ${aft.hip} ${crotch} ${aft.hip} ${hip}`,
    smallOfBackLine(f),
    backLine(f),
  ].join('');
  const fold = text`M${aft.thigh} ${crotch + 0.12 * thighLong}q${40 * u} ${10 * u} ${70 * u} ${-4 * u}`;
  return { outlines: [outline], grounds: [`${outline}Z`], soft: [fold] };
}

/** Sitting upright; the seat of the chair is at the level of the crotch line, for that is what is measured. */
export function seatedLines(f: FigureShape): FigureLines {
  const { fore, aft, hipLevel: hip, crotchLevel: seat, unit: u, chair, seatedKnee: knee } = f;
  const floor = seat + chair;
  const lap = seat - 0.8 * (fore.thigh - aft.thigh);
  const [shinFore, shinAft] = [knee, knee - (fore.knee - aft.knee)];
  const [ankleFore, ankleAft] = [shinFore - 8 * u, shinFore - 8 * u - (fore.ankle - aft.ankle)];
  const toe = ankleAft + (f.toe - aft.ankle);
  const outline = [
    chestLine(f),
    text`C${fore.waist * 1.12} ${lap * 0.4} ${fore.waist * 1.1} ${lap - 6 * u} ${fore.waist * 1.1} ${lap}`,
    text`C${knee * 0.5} ${lap} ${knee * 0.72} ${seat - 118 * u} ${knee - 34 * u} ${seat - 112 * u}`,
    text`Q${shinFore + 4 * u} ${seat - 104 * u} ${shinFore + 2 * u} ${seat - 50 * u}`,
    text`C${shinFore} ${seat + 0.3 * chair} ${ankleFore} ${floor - 0.4 * chair} ${ankleFore} ${floor - 78 * u}`,
    text`C${ankleFore + 8 * u} ${floor - 48 * u} ${ankleFore + 0.5 * (toe - ankleFore)} ${floor - 34 * u} ${toe - 28 * u} ${floor - 24 * u}`,
    text`Q${toe} ${floor - 18 * u} ${toe} ${floor - 8 * u}Q${toe} ${floor} ${toe - 12 * u} ${floor}H${ankleAft}`,
    text`Q${ankleAft - 14 * u} ${floor} ${ankleAft - 14 * u} ${floor - 18 * u}C${ankleAft - 14 * u} ${floor - 44 * u} ${ankleAft} ${floor - 54 * u} ${ankleAft} ${floor - 78 * u}`,
    text`C${ankleAft} ${floor - 0.45 * chair} ${shinAft - 22 * u} ${seat + 0.4 * chair} ${shinAft - 4 * u} ${seat + 18 * u}`,
    text`Q${shinAft - 8 * u} ${seat} ${shinAft - 36 * u} ${seat}H${aft.hip + 44 * u}`,
    text`C${aft.hip - 14 * u} ${seat} ${aft.hip - 8 * u} ${hip} ${aft.hip * 0.98} ${hip * 0.86}`,
    text`C${aft.hip * 0.92} ${hip * 0.5} ${aft.waist} ${hip * 0.4} ${aft.waist} 0`,
    backLine(f),
  ].join('');
  const [left, right] = [aft.hip - 30 * u, shinAft - 50 * u];
  const furniture = text`M${left} ${seat}H${right}V${seat + 24 * u}H${left}ZM${left + 16 * u} ${seat + 24 * u}V${floor}M${right - 16 * u} ${seat + 24 * u}V${floor}`;
  return { outlines: [outline], grounds: [`${outline}Z`], soft: [], furniture };
}

/** Head to foot from the front; the waist at 0, as in the other views. */
export function wholeLines(f: FigureShape): FigureLines {
  const up = f.height - f.floor;
  const { half, crotchLevel: crotch, unit: u } = f;
  const chest = Math.max(half.waist * 1.04, 0.235 * up);
  const hand = half.hip + 46 * u;
  const sides = SIDES.map((s) => {
    const x = (value: number) => s * value;
    const arm = [
      text`M${x(0.075 * up)} ${-0.75 * up}C${x(0.075 * up)} ${-0.63 * up} ${x(0.16 * up)} ${-0.625 * up} ${x(0.25 * up)} ${-0.6 * up}`,
      text`C${x(0.33 * up)} ${-0.58 * up} ${x(0.34 * up)} ${-0.5 * up} ${x(0.345 * up)} ${-0.4 * up}`,
      text`C${x(0.36 * up)} ${-0.1 * up} ${x(hand + 24 * u)} ${crotch * 0.2} ${x(hand + 22 * u)} ${crotch * 0.8}`,
      text`C${x(hand + 34 * u)} ${crotch * 0.9} ${x(hand + 26 * u)} ${crotch + 130 * u} ${x(hand + 4 * u)} ${crotch + 120 * u}`,
      text`C${x(hand - 14 * u)} ${crotch + 60 * u} ${x(hand - 18 * u)} ${crotch * 0.95} ${x(hand - 20 * u)} ${crotch * 0.8}`,
      text`C${x(hand - 24 * u)} ${crotch * 0.1} ${x(Math.max(chest + 14 * u, 0.27 * up))} ${-0.1 * up} ${x(Math.max(chest + 4 * u, 0.25 * up))} ${-0.42 * up}`,
    ].join('');
    const torso = text`M${x(Math.max(chest + 4 * u, 0.25 * up))} ${-0.42 * up}C${x(chest)} ${-0.3 * up} ${x(half.waist)} ${-0.16 * up} ${x(half.waist)} 0`;
    const legs = halfOutline(f, s);
    return {
      arm,
      torso,
      legs: `M${Math.round(x(half.waist))} 0${legs.slice(legs.indexOf('C', legs.indexOf('C') + 1))}`,
    };
  });
  const [headX, headY, head] = [0.095 * up, 0.15 * up, -0.85 * up];
  const skull = text`M${-headX} ${head}a${headX} ${headY} 0 1 1 ${2 * headX} 0a${headX} ${headY} 0 1 1 ${-2 * headX} 0Z`;
  const trunks = sides.map(
    ({ arm, torso, legs }) => `${arm}${torso.replace(/^M[^C]*/, '')}${legs.replace(/^M[^C]*/, '')}`,
  );
  return {
    grounds: [...trunks.map((line) => `${line}V${Math.round(-0.75 * up)}Z`), skull],
    outlines: [...trunks, skull],
    soft: [],
  };
}
