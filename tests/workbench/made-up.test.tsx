import { readFileSync } from 'node:fs';
import 'fake-indexeddb/auto';
import { act, cleanup, fireEvent, render, screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { NO_CORRECTIONS } from '../../src/block';
import { exampleProject, openProject, STATIONS, saveProject } from '../../src/project';
import { ENGLISH, speak, speakNamed } from '../../src/words';
import ClassDialog from '../../src/workbench/class/ClassDialog';
import { chooseTable } from '../../src/workbench/class/class-table';
import { useProjectsOpen } from '../../src/workbench/faults/projects-open';
import { useManner } from '../../src/workbench/look/manner';
import { openFromFile } from '../../src/workbench/open/open';
import { useOffered } from '../../src/workbench/open/repairs';
import PhotoScreen from '../../src/workbench/photo/PhotoScreen';
import { copyOf } from '../../src/workbench/shelf/copy';
import { onThisPage } from '../../src/workbench/shelf/start';
import { useBench } from '../../src/workbench/store/bench';
import { noHistory } from '../../src/workbench/store/history';
import { take, useTaking } from '../../src/workbench/take/taking';
import { Workbench } from '../../src/workbench/Workbench';
import { useRun } from '../../src/workbench/working/run';
import { escapedFrom } from '../escaped-words';
import { openPdf } from '../outside/paper/render';
import { throughPhotoSteps } from './photo-steps';

/** Inches, sizes of paper, a key, the name of this house, and the titles of documents: the same in every language. */
const SIGNS = /^(in|Letter|Legal|Tabloid|Roll|Esc|Legwork|PDF)$/;

const ATTRIBUTES = ['aria-label', 'aria-description', 'aria-valuetext', 'aria-roledescription', 'title', 'placeholder'];

/** All that is read on the page or told to those who listen. */
function pageText(): string {
  const texts = [document.title];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (walker.nextNode()) texts.push(walker.currentNode.textContent ?? '');
  for (const name of ATTRIBUTES)
    for (const one of document.querySelectorAll(`[${name}]`)) texts.push(one.getAttribute(name) ?? '');
  return texts.join('\n');
}

const escaped = (own = SIGNS) => escapedFrom(pageText(), own);

/** A worker of this process. As every world of its own it begins with English. */
class WorkerHere {
  onmessage = (_: { data: unknown }) => {};
  postMessage(order: unknown) {
    speak(ENGLISH);
    vi.stubGlobal('postMessage', (data: { readonly fault?: unknown }) => {
      expect(data.fault).toBeUndefined();
      this.onmessage({ data: structuredClone(data) });
    });
    hear({ data: structuredClone(order) });
  }
  terminate() {}
}
let hear = (_: { data: unknown }) => {};
let taken: Blob[] = [];

/** This document's blobs have no bytes of their own. */
const bytesOf = (blob = new Blob()) =>
  new Promise<Uint8Array>((resolve) => {
    const reader = new FileReader();
    reader.onload = () => resolve(new Uint8Array(reader.result as ArrayBuffer));
    reader.readAsArrayBuffer(blob);
  });

beforeAll(async () => {
  await speakNamed('made-up');
  HTMLCanvasElement.prototype.getContext = () => null;
  vi.stubGlobal('addEventListener', (_: string, listener: typeof hear) => {
    hear = listener;
  });
  await import('../../src/workbench/take/files-worker');
  vi.unstubAllGlobals();
  vi.stubGlobal('Worker', WorkerHere);
  // By its path: addresses are this document's own kind here, which no file is read by.
  vi.stubGlobal('fetch', async () => new Response(readFileSync('public/fonts/legwork-print.ttf')));
  URL.createObjectURL = (blob) => {
    taken.push(blob as Blob);
    return 'blob:taken';
  };
  URL.revokeObjectURL = () => {};
});
beforeEach(() => {
  useBench.setState(useBench.getInitialState(), true);
  taken = [];
  act(() => {
    const { choose, project } = useBench.getState();
    choose('name', 'Zzz');
    choose('body', { ...project.body, label: 'Zzz' });
  });
});
afterEach(async () => {
  cleanup();
  await speakNamed('made-up');
});

const goTo = async (station: (typeof STATIONS)[number]) => {
  act(() => useBench.getState().goTo(station));
  // Most stations come late.
  await waitFor(() => expect(document.querySelector('.stop-inside > *, .show')).not.toBeNull());
};
const choose = (choices: readonly (readonly [string, unknown])[]) =>
  act(() => {
    for (const [path, value] of choices) useBench.getState().choose(path, value);
  });

describe('in the made-up language the page shows no English', () => {
  it.each([
    ['of the example', []],
    [
      'of cords and a pair whose legs differ, in inches',
      [
        ['waist.finish', 'elasticAndDrawstring'],
        ['hem.finish', 'drawstringCasing'],
        ['sides', { left: { longerLeg: 12, higherHip: 8 }, right: { fullerHip: 20 } }],
        ['units', 'inch'],
      ],
    ],
    [
      'of faced edges, patch pockets and a sloping back',
      [
        ['waist.finish', 'facedCasing'],
        ['hem.finish', 'facedHem'],
        ['cloth.piecedTip', 50],
        ['fit', { ...NO_CORRECTIONS, flatSeat: 10 }],
        ['pocket', { width: 150, height: 165, facing: 30, part: 'back', count: 2 }],
      ],
    ],
  ] as const)('at any station, %s', async (_, choices) => {
    render(<Workbench />);
    choose(choices);
    act(() => useBench.getState().showWorking(true));
    for (const station of STATIONS) {
      await goTo(station);
      if (station === 'sew') await waitFor(() => expect(document.querySelector('.sew-step')).not.toBeNull());
      expect(escaped(), station).toEqual([]);
    }
    expect(pageText()).toContain('«');
  });

  it('where something typed can’t be, nor in what is undone, nor in any hint', async () => {
    render(<Workbench />);
    for (const station of ['body', 'leg', 'edges', 'cloth', 'paper'] as const) {
      await goTo(station);
      const [field] = document.querySelectorAll<HTMLInputElement>('.stop-inside .field-box input');
      for (const typed of ['99999', 'zz', '']) {
        if (field) fireEvent.change(field, { target: { value: typed } });
        expect(escaped(), `${station} ${typed}`).toEqual([]);
      }
      act(() => useBench.getState().undo());
      act(() => useManner.getState().putAway(['button', 'how', 'path'].slice(0, STATIONS.indexOf(station))));
      expect(escaped(), station).toEqual([]);
    }
  });

  it('in show mode', async () => {
    render(<Workbench />);
    act(() => useManner.getState().show(true));
    for (const station of STATIONS) {
      await goTo(station);
      act(() => useRun.getState().move(1));
      expect(escaped(), station).toEqual([]);
    }
    act(() => useManner.getState().show(false));
  });

  it('among the projects and bodies that are kept', async () => {
    const { shelf } = onThisPage();
    const project = { ...exampleProject, name: 'Zzz' };
    await shelf.put(copyOf({ ...useBench.getState(), id: 'other', project }, 1, Date.now() - 7_200_000), noHistory, 0);
    await shelf.putBody({ id: 'body', label: 'Zzz', figures: { hipGirth: 1000 }, savedAt: 1 });
    await shelf.setAside('other', '«zzz»', {});
    render(<Workbench />);
    act(() => useProjectsOpen.setState({ open: true }));
    const tabs = await screen.findAllByRole('tab');
    await waitFor(() => expect(document.querySelectorAll('.kept-row')).toHaveLength(2));
    expect(escaped()).toEqual([]);
    await userEvent.click(tabs[1] as HTMLElement);
    await waitFor(() => expect(document.querySelectorAll('.kept-row')).toHaveLength(1));
    expect(escaped()).toEqual([]);
    act(() => useProjectsOpen.setState({ open: false }));
  });

  it('in the list of repairs, and of a file that can’t be opened', async () => {
    render(<Workbench />);
    const text = saveProject({ ...exampleProject, name: 'Zzz' });
    const hip = text.replace(/"hipGirth": \d+/, '"hipGirth": "1"').replace(/"units": "cm"/, '"units": {}');
    expect(openProject(hip).ok).toBe(false);
    await act(() => openFromFile(new File([hip], 'zzz.legwork.json')));
    await screen.findByRole('dialog');
    expect(escaped(/^(Legwork|legwork|json|inch)$/)).toEqual([]);
    act(() => useOffered.setState({ offered: undefined }));
    await act(() => openFromFile(new File(['zzz'], 'zzz')));
    expect(await screen.findByRole('alert')).toBeTruthy();
    expect(escaped()).toEqual([]);
  });

  it('in the sheet of a class, whose rows a worker looks through in its language', async () => {
    render(<ClassDialog onClose={() => {}} />);
    expect(escaped()).toEqual([]);
    const rows = ['Zzz,74,102,27,76,1', 'Zzz,7,102,27,76,', 'Zzz,80,108,28,78,', ',120,95,27,75,'];
    const table = ['Name,Waist (cm),Hip (cm),Body rise (cm),Inside leg (cm),Zz', ...rows, ...rows, ...rows].join('\n');
    await act(() => chooseTable(new File([table], 'zzz')));
    await waitFor(() => expect(document.querySelector('.class-row')).not.toBeNull());
    expect(pageText()).toContain('Waist (cm): "7"');
    expect(escapedFrom(pageText().replace(/(Waist|Hip) \(cm\)(: "7")?/g, ''), SIGNS)).toEqual([]);
  });

  it('on the screen for blocks from a photograph, at any step', () => {
    render(<PhotoScreen />);
    throughPhotoSteps(() => expect(escaped()).toEqual([]));
  });

  it('in a file that is made beside the page', async () => {
    take('handout');
    await waitFor(() => expect(useTaking.getState().busy).toBeUndefined());
    const pdf = openPdf(await bytesOf(taken[0]));
    const text = pdf.text();
    pdf.close();
    expect(text).toContain('«');
    expect(escapedFrom(text, SIGNS)).toEqual([]);
  });

  it('and what does is found', () => {
    render(<section aria-label="«zzz~» drawn">cloth «zzz~»</section>);
    expect(escaped()).toEqual(['cloth', 'drawn']);
  });
});
