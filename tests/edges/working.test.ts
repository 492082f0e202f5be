import { describe, expect, it } from 'vitest';
import { type Draft, draft, exampleProject, type Project, workingOf } from '../../src/project';
import { printPhrase } from '../../src/words';

type Waist = Partial<Project['waist']>;
type Hem = Partial<Project['hem']>;

const drafted = (waist: Waist = {}, hem: Hem = {}): Draft => {
  const result = draft({
    ...exampleProject,
    waist: { ...exampleProject.waist, ...waist },
    hem: { ...exampleProject.hem, ...hem },
  });
  if (!result.ok) throw new Error(result.problems.map((p) => p.field).join());
  return result.value;
};
const edgeSteps = (d: Draft) => workingOf(d).filter(({ station }) => station === 'edges');
const told = (d: Draft, id: string): readonly string[] =>
  edgeSteps(d)
    .filter((step) => step.id === `edges.${id}`)
    .flatMap(({ sentence, formula }) => [printPhrase(sentence, 'cm'), printPhrase(formula, 'cm')]);
const lit = (d: Draft, id: string): readonly string[] =>
  edgeSteps(d)
    .filter((step) => step.id === `edges.${id}`)
    .flatMap(({ lines }) => lines.map(({ name }) => name))
    .toSorted();
const ids = (d: Draft) => edgeSteps(d).map(({ id }) => id.replace('edges.', ''));

// What is read beside the drawing and handed out in class: written out here once for every finish, with its numbers.
describe('what is told of the waist', () => {
  it.each([
    [
      { finish: 'elasticCasing' },
      'The casing is built 5.4 cm above the waist edge: twice the elastic and the turn of the cloth. It folds halfway: 2 × 2.7 cm = 5.4 cm.',
      '2 × 2.5 cm + 0.3 cm + rounding 0.1 cm = 5.4 cm',
    ],
    [
      { finish: 'elasticCasing', rows: 2, elasticWidth: 10 },
      'The casing is built 4.6 cm above the waist edge: twice the elastic and the turn of the cloth. It folds halfway: 2 × 2.3 cm = 4.6 cm.',
      '2 × 2 rows × 1 cm + 0.3 cm for the turn + 1 × 0.3 cm between the rows = 4.6 cm',
    ],
    [
      { finish: 'drawstringCasing' },
      'The casing is built 3.6 cm above the waist edge, so that the cord runs with room. It folds halfway: 2 × 1.8 cm = 3.6 cm.',
      '2 × (cord 1 cm + 0.6 cm of room) + 0.3 cm + rounding 0.1 cm = 3.6 cm',
    ],
    [
      { finish: 'elasticAndDrawstring' },
      'The casing is built 8.7 cm above the waist edge: the elastic below, the cord in a channel of its own above it. It folds halfway: 2 × 4.3 cm + rounding 0.1 cm = 8.7 cm.',
      '2 × 2.5 cm + 0.3 cm + 2 × (cord 1 cm + 0.6 cm of room) + rounding 0.2 cm = 8.7 cm',
    ],
    [
      { finish: 'separateCasing' },
      'The casing is a straight piece of its own, 5.4 cm high before it is folded, and about 104 cm long: the waist edge all round.',
      '2 × 2.5 cm + 0.3 cm + rounding 0.1 cm = 5.4 cm',
    ],
    [
      { finish: 'knitBand', bandStretch: 0.6 },
      'A band of knit, 6 cm high when folded, is sewn to the waist edge, stretched to it.',
      'the larger of 0.85 × waist and fullest part ÷ (1 + 0.7 × 0.6)',
    ],
    [
      { finish: 'facedCasing' },
      'The leg ends 2.7 cm above the waist edge; a facing of the leg’s own shape is sewn on there and turned inside, so that the casing lies flat at any lean.',
      'half of 2 × 2.5 cm + 0.3 cm + rounding 0.1 cm = 5.4 cm',
    ],
  ] as const)('%o', (waist, sentence, formula) => {
    expect(told(drafted(waist), 'casing')).toEqual([sentence, formula]);
  });

  it('lights the casing’s own lines', () => {
    expect(lit(drafted({ rows: 3, elasticWidth: 10 }), 'casing')).toEqual([
      'channelStitching',
      'channelStitching',
      'waist',
      'waistEdge',
      'waistFold',
    ]);
  });

  it('says how its raw edge is caught, where one is', () => {
    expect(told(drafted(), 'catch')[0]).toBe(
      '0.6 cm more lie beyond the stitching, so that the overlocked or zigzagged edge is caught.',
    );
    expect(told(drafted({ rawEdge: 'turnedUnder' }), 'catch')[0]).toBe(
      '1 cm more lie beyond the stitching, so that the edge turned under is caught.',
    );
    expect(lit(drafted(), 'catch')).toEqual(['casingStitching', 'waist']);
    for (const none of [{ elastic: 'sewnOn' }, { finish: 'separateCasing' }, { finish: 'knitBand' }] as const)
      expect(ids(drafted(none)), JSON.stringify(none)).not.toContain('catch');
  });

  it('says how long elastic and cord are cut, where there are any', () => {
    const both = drafted({ finish: 'elasticAndDrawstring' });
    expect(told(both, 'elastic')).toEqual([
      'Cut the elastic 70.8 cm long: it holds, and it never is longer than the opening.',
      'the larger of 0.92 × waist 74.2 cm and waist − 7 cm, + 2.5 cm lap; never more than the opening',
    ]);
    expect(told(both, 'cord')).toEqual([
      'The cord comes out 2 cm to each side of centre front, through the outer layer, reinforced; it is 159 cm long.',
      'the opening and two ends of 27.5 cm to tie',
    ]);
    expect([lit(both, 'elastic'), lit(both, 'cord')]).toEqual([['quarter', 'quarter'], ['cordOpening']]);
    expect(ids(drafted())).not.toContain('cord');
    expect(ids(drafted({ finish: 'drawstringCasing' }))).not.toContain('elastic');
  });
});

describe('what is told of the hem', () => {
  it.each([
    [{ finish: 'turned' }, 'The hem is turned up 3 cm, with 1 cm turned under.', ''],
    [{ finish: 'turned', turnUnder: 0 }, 'The hem is turned up 3 cm, its edge overlocked or zigzagged.', ''],
    [
      { finish: 'elasticCasing' },
      'The hem is a casing 1.4 cm deep; cut its elastic 25.4 cm long.',
      'elastic 1.3 cm and room; the leg where it ends, 1 cm of room and 2.5 cm lap',
    ],
    [
      { finish: 'drawstringCasing' },
      'The hem is a casing 1.2 cm deep with its opening at the side; its cord is 74 cm long.',
      'cord 0.6 cm + 0.6 cm of room; its length: the hem once round and two ends of 14 cm to tie',
    ],
    [{ finish: 'contrastBand' }, 'A doubled band, 6 cm high, is sewn to the leg, which ends that much higher.', ''],
    [
      { finish: 'ribCuff' },
      'A cuff of rib, 6 cm high, is sewn to the leg, which ends that much higher; it stretches enough to be pulled on.',
      'the larger of the leg where it ends + 1 cm and the fullest of foot and calf below ÷ (1 + 0.7 × 0.5)',
    ],
    [
      { finish: 'facedHem', turnUnder: 8 },
      'A facing of the leg’s own shape, 3 cm deep, is sewn to the hem and turned inside, with 0.8 cm turned under.',
      '',
    ],
  ] as const)('%o', (hem, sentence, formula) => {
    expect(told(drafted({}, hem), 'hem')).toEqual([sentence, formula]);
  });

  it('lights the lines of the hem that is made', () => {
    expect(lit(drafted(), 'hem')).toEqual(['hem', 'hemFold', 'hemStitching', 'turnUnderFold']);
    expect(lit(drafted({}, { finish: 'drawstringCasing', turnUnder: 0 }), 'hem')).toEqual([
      'hem',
      'hemCordOpening',
      'hemFold',
      ...Array.from({ length: 6 }, () => 'hemQuarter'),
      'hemStitching',
    ]);
    const band = ['hem', 'hemQuarter', 'hemQuarter', 'hemQuarter'];
    expect(lit(drafted({}, { finish: 'contrastBand' }), 'hem')).toEqual(band);
  });
});

describe('what is told of turnings, seams and marks', () => {
  it('explains the mirrored turnings, and lights them, only where something is folded', () => {
    const turnings = ['centreBackTurning', 'centreFrontTurning'];
    expect(lit(drafted(), 'mirror')).toEqual(
      [...turnings, 'hemFold', 'inseamBackTurning', 'inseamFrontTurning', 'waistFold'].toSorted(),
    );
    expect(lit(drafted({}, { finish: 'facedHem' }), 'mirror')).toEqual([...turnings, 'waistFold']);
    // None of these is reckoned.
    for (const id of ['catch', 'mirror', 'allowances', 'marks']) expect(told(drafted(), id)[1], id).toBe('');
    expect(told(drafted(), 'mirror')[0]).toMatch(/mirrors the leg on this side of it: turned over, it lies flat/);
    expect(ids(drafted({ finish: 'separateCasing' }, { finish: 'facedHem' }))).not.toContain('mirror');
  });

  it('says the allowances of both seams and lights the whole cut line', () => {
    const result = draft({ ...exampleProject, allowances: { ...exampleProject.allowances, inseam: 10, crotch: 20 } });
    if (!result.ok) throw new Error('refused');
    expect(told(result.value, 'allowances')[0]).toMatch(/: 1 cm at the inseams, 2 cm at the crotch seam\./);
    expect(lit(result.value, 'allowances')).toHaveLength(result.value.pieces[0]?.cutLine.length ?? 0);
  });

  it('tells of notches and quarters in the order of work', () => {
    expect(told(drafted(), 'marks')[0]).toMatch(/^One notch in front and two behind .* apart from the side\.$/);
    expect(lit(drafted(), 'marks')).toEqual(['quarter', 'quarter', 'side']);
    expect(ids(drafted({ finish: 'elasticAndDrawstring' }))).toEqual([
      'casing',
      'catch',
      'mirror',
      'elastic',
      'cord',
      'hem',
      'allowances',
      'marks',
    ]);
  });
});
