import { act, cleanup, render, screen, waitFor } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { USAGE } from '../../src/command/arguments';
import { placedDrawings, uprightPlaces } from '../../src/drawing';
import { FILE_KINDS } from '../../src/files';
import { madeMember } from '../../src/files/class/member';
import { summaryContent } from '../../src/files/class/summary-content';
import { emptyTable } from '../../src/files/class/write-table';
import { fitContent, VERDICT_WORDS } from '../../src/files/fit/content';
import { writeHandout } from '../../src/files/guide/handout';
import { writeGuideHtml } from '../../src/files/guide/html';
import { MOST_NESTED, nestedStyle } from '../../src/files/nest/styles';
import { firstWords } from '../../src/files/pdf/first-words';
import { draft, withValue } from '../../src/project';
import ClassDialog from '../../src/workbench/class/ClassDialog';
import { designOf, useClass } from '../../src/workbench/class/class-table';
import { useBench } from '../../src/workbench/store/bench';
import { STATIONS } from '../../src/workbench/store/stations';
import { Workbench } from '../../src/workbench/Workbench';
import { seenLabels, unlisted } from './labels';

const fresh = useBench.getInitialState();

beforeEach(() => useBench.setState(fresh, true));
afterEach(cleanup);

/** Every finish of waist and hem once, on either machine. */
const GUIDES = [
  ['elasticCasing', 'turned', 'plain'],
  ['drawstringCasing', 'elasticCasing', 'serger'],
  ['elasticAndDrawstring', 'drawstringCasing', 'plain'],
  ['separateCasing', 'contrastBand', 'serger'],
  ['facedCasing', 'facedHem', 'plain'],
  ['knitBand', 'ribCuff', 'serger'],
] as const;

/** Headings, names of steps and settings, names of rows, and the words in the pictures. */
function guideLabels(html: string): readonly string[] {
  const page = new DOMParser().parseFromString(html, 'text/html');
  return [...page.querySelectorAll('h2, h3, dt, b, svg text')].map((one) =>
    (one.textContent ?? '').replace(/^\d+\. /, ''),
  );
}

/** What is underlined. */
function handoutHeadings(text: string): readonly string[] {
  const lines = text.split('\n');
  return lines.filter((_, i) => /^-+$/.test(lines[i + 1] ?? ''));
}

const goTo = (station: (typeof STATIONS)[number]) => act(() => useBench.getState().goTo(station));

describe('every label stands in docs/labels.md with where it comes from', () => {
  it('on the screen, at every station', async () => {
    render(<Workbench />);
    const labels = new Set<string>();
    for (const station of STATIONS) {
      goTo(station);
      // Most stations come late.
      await waitFor(() => expect(document.querySelector('.stop-inside > *')).not.toBeNull(), { timeout: 20_000 });
      if (station === 'sew') await screen.findByRole('region', { name: 'Step of the sewing' }, { timeout: 20_000 });
      for (const label of seenLabels()) labels.add(label);
    }
    expect(labels.size).toBeGreaterThan(200);
    expect(unlisted(labels)).toEqual([]);
  });

  it('on the screen, with every finish of waist and hem', async () => {
    render(<Workbench />);
    const labels = new Set<string>();
    for (const [waist, hem] of [
      ['drawstringCasing', 'elasticCasing'],
      ['elasticAndDrawstring', 'drawstringCasing'],
      ['separateCasing', 'contrastBand'],
      ['facedCasing', 'facedHem'],
      ['knitBand', 'ribCuff'],
    ] as const) {
      act(() => useBench.getState().choose('waist.finish', waist));
      act(() => useBench.getState().choose('hem.finish', hem));
      for (const station of ['edges', 'check'] as const) {
        goTo(station);
        for (const label of seenLabels()) labels.add(label);
      }
    }
    expect(unlisted(labels)).toEqual([]);
  });

  it('in the sheet of a class', () => {
    const { draft } = useBench.getState();
    const row = { row: 2, name: '', project: { ok: true, value: draft.project } } as const;
    const unmade = { row: 3, name: '', figures: undefined, look: ['why'], mind: [] };
    useClass.setState({
      table: { name: '', bytes: new Uint8Array() },
      project: designOf(useBench.getState()),
      looked: { members: [...Array(9).fill(madeMember(row, draft)), unmade], unused: [], leftOut: [] },
    });
    render(<ClassDialog onClose={() => {}} />);
    const labels = seenLabels();
    expect(labels).toContain('Make the set, ZIP');
    expect(labels).toContain('those to look at');
    expect(unlisted(labels)).toEqual([]);
  });

  it('on the paper: on the pieces and the first sheet', () => {
    const { draft } = useBench.getState();
    const { under: _whose, ...words } = firstWords(draft, new Date(0), '');
    const titles = [...words.inSquare, ...words.sections].map(({ title }) => title.replace(/^(Body): .*/, '$1'));
    const rows = words.sections.filter(({ title }) => title === 'Finished measures').flatMap((part) => part.rows ?? []);
    act(() => useBench.getState().choose('cloth.piecedTip', 50));
    const { printed } = useBench.getState().draft;
    const onPieces = placedDrawings(printed, uprightPlaces(printed)).flatMap(({ texts }) =>
      texts.map(({ text }) => text),
    );
    const own = [draft.project.name, draft.project.body.label];
    const labels = [...titles, ...rows.map(({ name }) => name), ...onPieces].filter((text) => !own.includes(text));
    expect(labels.length).toBeGreaterThan(15);
    expect(unlisted(labels)).toEqual([]);
  });

  it('on the fit sheet and the summary of a class', () => {
    const { draft } = useBench.getState();
    const { says, lines, sections, estimated } = fitContent(draft);
    expect(estimated).toBe(true);
    const row = { row: 2, name: '', project: { ok: true, value: draft.project } } as const;
    const { columns, totals } = summaryContent('', [madeMember(row, draft)], 'cm', []);
    const labels = [
      says,
      ...Object.values(VERDICT_WORDS).map(({ template }) => template),
      ...lines.map(({ name }) => name),
      ...sections.map(({ title }) => title),
      ...columns.map(({ head }) => head),
      ...totals.map((total) => total.split(':')[0] ?? ''),
    ];
    expect(unlisted(labels)).toEqual([]);
  });

  it('in the empty table', () => {
    const [heads = ''] = emptyTable({ units: 'cm' }).replace('\uFEFF', '').split('\r\n');
    expect(unlisted(heads.split(',').map((head) => head.replace(/ \([a-z]+\)$/, '')))).toEqual([]);
  });

  it('on the paper: in the sewing guide, in the handout and on a nest of bodies', () => {
    const { project } = useBench.getState();
    const labels = new Set<string>();
    for (const [waist, hem, machine] of GUIDES) {
      const drafted = draft(
        [
          ['waist.finish', waist],
          ['hem.finish', hem],
          ['sewing.machine', machine],
          ['pocket.kind', 'patch'],
          ['cloth.piecedTip', machine === 'plain' ? 50 : 0],
        ].reduce((all, [path, value]) => withValue(all, String(path), value), project),
      );
      if (!drafted.ok) throw new Error(`${waist} with ${hem} can not be drafted`);
      for (const label of guideLabels(writeGuideHtml(drafted.value))) labels.add(label);
      for (const label of handoutHeadings(writeHandout(drafted.value))) labels.add(label);
    }
    for (let body = 0; body < MOST_NESTED; body += 1) labels.add(nestedStyle(body).name.template);
    labels.delete(project.name);
    expect(labels.size).toBeGreaterThan(100);
    expect(unlisted(labels)).toEqual([]);
  });

  it('of a pair whose legs differ: on the screen, on the pieces, on the fit sheet and in the guide', async () => {
    render(<Workbench />);
    const labels = new Set<string>();
    act(() => useBench.getState().choose('sides', { left: { longerLeg: 12, higherHip: 8 }, right: { fullerHip: 20 } }));
    act(() => useBench.getState().choose('waist.finish', 'facedCasing'));
    for (const station of ['leg', 'edges', 'check', 'cloth'] as const) {
      goTo(station);
      await waitFor(() => expect(document.querySelector('.stop-inside > *')).not.toBeNull(), { timeout: 20_000 });
      for (const label of seenLabels()) labels.add(label);
    }
    expect([...labels]).toContain('Left leg longer');
    const { draft: both } = useBench.getState();
    for (const { texts } of placedDrawings(both.printed, uprightPlaces(both.printed)))
      for (const { text } of texts) labels.add(text);
    for (const { name } of fitContent(both).lines) labels.add(name);
    for (const label of guideLabels(writeGuideHtml(both))) labels.add(label);
    for (const own of [both.project.name, both.project.body.label]) labels.delete(own);
    expect(unlisted(labels)).toEqual([]);
  });

  it('on the command line', () => {
    const options = USAGE.match(/--(?!silent)[a-z][a-z-]*/g) ?? [];
    expect(options.length).toBeGreaterThan(4);
    expect(unlisted([...options, ...FILE_KINDS])).toEqual([]);
  });

  it('and one that does not is found', () => {
    expect(unlisted(['Spread', 'Frobnicate 12 cm'])).toEqual(['frobnicate … cm']);
  });
});
