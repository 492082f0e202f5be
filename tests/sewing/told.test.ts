import { describe, expect, it } from 'vitest';
import { plateBodies } from '../../.house/plate-bodies';
import { formatLength, type Units } from '../../src/length';
import { type Point, pathEnd } from '../../src/plane';
import { draft, exampleProject, garmentOf, type Project } from '../../src/project';
import { type Garment, type SewingStep, sewingMinutes, sewingSteps, sewingTime } from '../../src/sewing';
import { printPhrase } from '../../src/words';
import { everyGarment, garmentWith } from './garments';

const told = (step: SewingStep | undefined, units: Units = 'cm'): readonly string[] =>
  (step?.tasks ?? []).map((task) => printPhrase(task, units));
const stepOf = (garment: Garment, id: string) => sewingSteps(garment).find((step) => step.id === id);

/** Very different people, each ready to be sewn. */
const people: readonly (readonly [string, Garment])[] = plateBodies.flat().map(({ name, body, rest }) => {
  const result = draft({
    ...exampleProject,
    ...rest,
    body: { label: name, ...body } as Project['body'],
  } as Project);
  if (!result.ok) throw new Error(name);
  return [name, garmentOf(result.value)];
});

/** What is told is rounded to the millimetre; what nobody sees, 3 mm, is told as none. */
const ROUNDED = 3;

describe('the folded leg', () => {
  /** The two upper corners of the folded leg, seen from the fold: found by turning the paper of the back over, not by a formula for mirrors. */
  const corners = ({ leg, finished }: Garment) => {
    const waist = finished.sewn.cutLine.find(({ name }) => name === 'waist')?.curves ?? [];
    const ends = [waist[0]?.[0], waist.at(-1)?.[3]] as readonly [Point, Point];
    const [back, front] = ends[0].x < ends[1].x ? ends : [ends[1], ends[0]];
    const [fc, fh] = [leg.front.crotchPoint, pathEnd(leg.front.inseam)];
    const [bc, bh] = [leg.back.crotchPoint, pathEnd(leg.back.inseam)];
    const angle = (from: Point, to: Point) => Math.atan2(to.y - from.y, to.x - from.x);
    const turned = (p: Point): Point => {
      const [far, way] = [Math.hypot(p.x - bc.x, p.y - bc.y), angle(fc, fh) - (angle(bc, p) - angle(bc, bh))];
      return { x: fc.x + far * Math.cos(way), y: fc.y + far * Math.sin(way) };
    };
    const half = (p: Point, q: Point): Point => ({ x: (p.x + q.x) / 2, y: (p.y + q.y) / 2 });
    const [upper, lower] = [half(bc, fc), half(bh, turned(bh))];
    const fold = angle(upper, lower);
    const seen = (p: Point) => {
      const [far, way] = [Math.hypot(p.x - upper.x, p.y - upper.y), angle(upper, p) - fold];
      return { up: -far * Math.cos(way), off: Math.abs(far * Math.sin(way)) };
    };
    return { front: seen(front), back: seen(turned(back)) };
  };

  it('is told as the outline has it, for very different people: how far inside the front the back lies, and how much higher', () => {
    const faults: string[] = [];
    let inside = 0;
    for (const [name, garment] of people) {
      const step = stepOf(garment, 'inseams');
      const tasks = step ? printPhrase(step.check, 'cm') : '';
      // Where the legs differ, the right one's figures follow the left one's.
      const text = tasks.slice(Math.max(0, tasks.indexOf('Right leg:')));
      const { front, back } = corners(garment);
      const [nearer, higher] = [front.off - back.off, back.up - front.up];
      const where = /corner lies (inside|outside|as far)[^,]*(?:, ([\d.]+) cm (?:nearer|farther))?/.exec(text);
      const level = /(?:and ([\d.]+) cm (higher|lower)|and as high)\./.exec(text);
      const [said, up] = [10 * Number(where?.[2] ?? 0), 10 * Number(level?.[1] ?? 0)];
      if (where?.[1] === 'inside') inside += 1;
      if (!where || !level) faults.push(`${name}: nothing is told in “${text}”`);
      else if (Math.abs((where[1] === 'outside' ? -said : said) - nearer) > ROUNDED)
        faults.push(`${name}: ${where[0]}, and it is ${nearer}`);
      else if (Math.abs((level[2] === 'lower' ? -up : up) - higher) > ROUNDED)
        faults.push(`${name}: ${level[0]}, and it is ${higher}`);
    }
    expect(faults).toEqual([]);
    expect(inside).toBeGreaterThan(people.length / 2);
  });

  it('folds where the two crotch points lie on each other', () => {
    for (const [name, { leg, ...rest }] of people) {
      if (rest.sides) continue;
      const off = -(leg.front.crotchPoint.x + leg.back.crotchPoint.x) / 2;
      const text = told(stepOf({ leg, ...rest }, 'inseams'))[0] ?? '';
      const figure = formatLength(Math.abs(off), 'cm');
      if (Math.abs(off) > 5) expect(text, name).toContain(off > 0 ? `${figure} behind` : `${figure} in front of`);
    }
  });
});

describe('the crotch seam', () => {
  it('is sewn twice, then trimmed, then finished, then pressed over something round, whatever sews it', () => {
    const order = (parts: Parameters<typeof garmentWith>[0]) =>
      told(stepOf(garmentWith(parts), 'crotch')).flatMap((task) =>
        [
          [/^Sew (?!the curve)|^Overlock along/, 'sew'],
          [/second time/, 'again'],
          [/^Trim the allowances/, 'trim'],
          [/both edges together/, 'finish'],
          [/ham/, 'press'],
        ].flatMap(([seen, what]) => ((seen as RegExp).test(task) ? [what as string] : [])),
      );
    const knit = { kind: 'knit', stretch: 0.4 } as const;
    for (const machine of ['plain', 'serger'] as const)
      expect(order({ sewing: { machine } })).toEqual(['sew', 'again', 'trim', 'finish', 'press']);
    expect(order({ cloth: knit })).toEqual(['sew', 'again', 'finish', 'press']);
    expect(order({ cloth: knit, sewing: { machine: 'serger' } })).toEqual(['sew', 'again', 'press']);
    // A narrow allowance is left as it is; where none is drawn somebody cut a wide one.
    expect(order({ allowances: { inseam: 10, crotch: 7 } })).toEqual(['sew', 'again', 'finish', 'press']);
    expect(order({ allowances: { inseam: 15, crotch: 0 } })).toContain('trim');
  });

  it('is sewn as far inside the line as somebody cut outside it, where no allowance is drawn', () => {
    const text = told(stepOf(garmentWith({ allowances: { inseam: 0, crotch: 0 } }), 'crotch')).join(' ');
    expect(text).toContain('as far from the edge as you cut outside the line');
    expect(text).not.toMatch(/\b0 cm from/);
  });
});

describe('a casing', () => {
  it('has the allowances of every seam that crosses it stitched down, before anything is drawn through', () => {
    const faults: string[] = [];
    let drawn = 0;
    for (const [name, garment] of everyGarment()) {
      const steps = sewingSteps(garment);
      const { heights, hemPlan } = garment.finished;
      const sewnOn = garment.waist.finish === 'elasticCasing' && garment.waist.elastic === 'sewnOn';
      // Elastic that is sewn to the raw edge lies where it is; only the rows above it are threaded.
      const atWaist = heights.channels.length - (sewnOn ? 1 : 0) > 0;
      const wanted = [
        ...(atWaist && heights.kind === 'folded' ? [/the centre seams will/] : []),
        ...(atWaist && heights.kind === 'faced' ? [/centre seams of legs and facing will/] : []),
        ...(atWaist && heights.kind === 'seamed' && heights.channels.length > 0 ? [/the end seam will/] : []),
        ...(hemPlan.channel && !steps.some(({ id }) => id === 'hem.flat') ? [/the inseams will/] : []),
      ];
      const tasks = steps.flatMap((step) => told(step));
      const held = tasks.filter((task) => /so that the safety pin does not catch/.test(task));
      const through = (seam: RegExp) =>
        tasks.findIndex((task) =>
          (seam.test('the inseams will')
            ? /^Thread each|^Draw each/
            : /[Tt]hread the other|safety pin into one end/
          ).test(task),
        );
      drawn += wanted.length;
      for (const seam of wanted) {
        const at = tasks.findIndex((task) => seam.test(task));
        if (at < 0 || at > through(seam)) faults.push(`${name}: ${seam} ${at} ${through(seam)}`);
      }
      if (held.length !== wanted.length) faults.push(`${name}: ${held.join(' | ')}`);
    }
    expect(faults.slice(0, 5)).toEqual([]);
    expect(drawn).toBeGreaterThan(50);
  });
});

describe('a knit', () => {
  it('is turned once at hem and casing, and told so where somebody chose otherwise', () => {
    const knit = { kind: 'knit', stretch: 0.4 } as const;
    const all = (parts: Parameters<typeof garmentWith>[0]) =>
      sewingSteps(garmentWith({ cloth: knit, ...parts })).flatMap((step) => told(step));
    const usual = all({ hem: { turnUnder: 'auto' } });
    expect(usual.filter((task) => /under, then|fold again|raw edge under/.test(task))).toEqual([]);
    expect(usual.join(' ')).toContain('twin needle');
    for (const parts of [{ hem: { turnUnder: 10 } }, { hem: { finish: 'facedHem', turnUnder: 10 } }] as const)
      expect(all(parts).join(' ')).toMatch(/A knit doesn’t fray/);
    expect(all({ waist: { rawEdge: 'turnedUnder' }, hem: { turnUnder: 'auto' } }).join(' ')).toMatch(
      /A knit doesn’t fray/,
    );
  });

  it('is never said to fray', () => {
    for (const [name, garment] of everyGarment())
      if (garment.cloth.kind === 'knit')
        for (const step of sewingSteps(garment))
          for (const text of [...step.tasks, step.why].map((phrase) => printPhrase(phrase, 'cm')))
            if (/\bfray/.test(text)) expect(text, name).toMatch(/doesn’t fray|ends from fraying/);
  });
});

describe('a waist band of knit', () => {
  it('is tried on before it is sewn on, its one seam at centre back', () => {
    const steps = sewingSteps(garmentWith({ waist: { finish: 'knitBand' } }));
    const tasks = steps.flatMap((step) => told(step));
    const [tried, on] = [/where it is too wide, take the seam in/, /^Slip the folded ring/].map((seen) =>
      tasks.findIndex((task) => seen.test(task)),
    );
    expect(tried).toBeGreaterThan(0);
    expect(tried).toBeLessThan(on ?? 0);
    expect(tasks.join(' ')).toContain('seam at centre back, middle at centre front');
  });
});

describe('the time', () => {
  it('is told as spans of hours that hold the sum of the steps, and as what people call so many', () => {
    for (const [name, garment] of people) {
      const steps = sewingSteps(garment);
      const { usual, first } = sewingMinutes(steps);
      const spans = [
        ...printPhrase(sewingTime(steps), 'cm').matchAll(/(an afternoon|a day|a weekend), about (\d+) to (\d+) hours/g),
      ];
      expect(spans, name).toHaveLength(2);
      for (const [i, minutes] of [usual, first].entries()) {
        const [, called, from, to] = spans[i] as RegExpMatchArray;
        expect(Number(from) * 60, name).toBeLessThanOrEqual(minutes);
        expect(Number(to) * 60, name).toBeGreaterThanOrEqual(minutes);
        expect(called, name).toBe(Number(to) <= 5 ? 'an afternoon' : Number(to) <= 9 ? 'a day' : 'a weekend');
      }
    }
  });
});
