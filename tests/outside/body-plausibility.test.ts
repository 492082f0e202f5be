import { describe, expect, it } from 'vitest';
import { type BodyInput, bodyProblems, bodyRemarks } from '../../src/body';
import { adults, adultsAreHere, children, childrenAreHere, sayLeftOut } from './body-people';

/** How many of the bodies something is remarked about, and by which rules; printed, so that a reader sees them. */
function remarked(name: string, bodies: readonly BodyInput[]): number {
  const counts = new Map<string, number>();
  let some = 0;
  for (const body of bodies) {
    const remarks = bodyRemarks(body);
    if (remarks.length > 0) some += 1;
    for (const { id } of remarks) counts.set(id, (counts.get(id) ?? 0) + 1);
  }
  const rules = [...counts].sort((a, b) => b[1] - a[1]).map(([id, count]) => `${id} ${count}`);
  console.log(
    `${name}: ${some} of ${bodies.length} remarked (${((100 * some) / bodies.length).toFixed(2)} %) ${rules.join(', ')}`,
  );
  return some / bodies.length;
}

/** The share of bodies at which a slip is caught: refused, or remarked. */
function caught(name: string, bodies: readonly BodyInput[]): number {
  const seen = bodies.filter((body) => bodyProblems(body).length > 0 || bodyRemarks(body).length > 0).length;
  console.log(`${name}: caught ${((100 * seen) / bodies.length).toFixed(1)} %`);
  return seen / bodies.length;
}

if (!adultsAreHere) sayLeftOut('remarks about 6,068 adults, and their slips');
if (!childrenAreHere) sayLeftOut('remarks about children');

// Source: ANSUR II, NATICK/TR-15/007 (2014). Ordinary bodies pass; what the tape and the keyboard get wrong is seen.
describe.runIf(adultsAreHere)('remarks about the survey’s adults', () => {
  const people = adultsAreHere ? adults() : [];

  it('are rare where everything was measured well', () => {
    expect(remarked('waist at the navel', people)).toBeLessThan(0.01);
  });

  // A natural waist lies 45 (women) or 33 mm (men) above the navel; its girth by bdims (Heinz et al., JSE 11(2), 2003):
  // −14 + 0.348 navel + 0.438 hip (women), −113 + 0.704 navel + 0.349 hip (men).
  it('are rare where the waist is tied at its natural place', () => {
    const natural = people.map(({ sex, ...body }) => {
      const up = sex === 'f' ? 45 : 33;
      return {
        ...body,
        waistGirth:
          sex === 'f'
            ? -14 + 0.348 * body.waistGirth + 0.438 * body.hipGirth
            : -113 + 0.704 * body.waistGirth + 0.349 * body.hipGirth,
        bodyRise: body.bodyRise + up,
        hipDepth: (body.hipDepth ?? 0) + up,
        waistToKnee: (body.waistToKnee ?? 0) + up,
        outsideLeg: (body.outsideLeg ?? 0) + up,
        crotchLength: (body.crotchLength ?? 0) + 2 * up,
        frontCrotchLength: (body.frontCrotchLength ?? 0) + up,
      };
    });
    expect(remarked('natural waist', natural)).toBeLessThan(0.01);
  });

  const inches = (key: 'hipGirth' | 'insideLeg' | 'bodyRise' | 'thighGirth' | 'crotchLength') =>
    people.map((body) => ({ ...body, [key]: (body[key] ?? 0) / 2.54 }));
  it.each(['hipGirth', 'insideLeg', 'bodyRise', 'thighGirth', 'crotchLength'] as const)(
    'or a refusal catch inches typed as centimetres: %s',
    (key) => {
      expect(caught(`${key} in inches as cm`, inches(key))).toBeGreaterThan(0.99);
    },
  );

  it('catch the outside leg typed as inside leg', () => {
    const slips = people.map((body) => ({ ...body, insideLeg: body.outsideLeg ?? 0 }));
    expect(caught('outside leg as inside leg', slips)).toBeGreaterThan(0.99);
    const bare = slips.map(({ label, height = 0, waistGirth, hipGirth, bodyRise, insideLeg }) => ({
      label,
      height,
      waistGirth,
      hipGirth,
      bodyRise,
      insideLeg,
    }));
    expect(caught('the same, only four figures and the height', bare)).toBeGreaterThan(0.99);
  });

  it('catch waist and hip swapped where the two differ by more than a quarter', () => {
    const slips = people.map(({ label, waistGirth, hipGirth, bodyRise, insideLeg }) => ({
      label,
      waistGirth: hipGirth,
      hipGirth: waistGirth,
      bodyRise,
      insideLeg,
    }));
    caught('waist and hip swapped, nothing else measured', slips);
    const thighs = slips.map((body, i) => ({ ...body, thighGirth: people[i]?.thighGirth ?? Number.NaN }));
    expect(caught('waist and hip swapped, the thigh measured', thighs)).toBeGreaterThan(0.3);
    const far = slips.filter(({ waistGirth, hipGirth }) => waistGirth > 1.26 * hipGirth);
    expect(far.length).toBeGreaterThan(100);
    expect(caught('of them by more than a quarter', far)).toBe(1);
  });
});

// Source: UM-HSRI-77-17 (1977); inside leg and rise are inferred from the gluteal furrow.
describe.runIf(childrenAreHere)('remarks about the survey’s children', () => {
  it('are rare', () => {
    expect(remarked('children', childrenAreHere ? children() : [])).toBeLessThan(0.02);
  });
});
