import '@testing-library/jest-dom/vitest';
import { act, cleanup, render, screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { Suspense } from 'react';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { openProject, withValue } from '../../src/project';
import { say } from '../../src/words';
import { FaultPage } from '../../src/workbench/FaultPage';
import { Guarded } from '../../src/workbench/faults/Guarded';
import { late, withLate } from '../../src/workbench/faults/late';
import { beforeLeaving, keepEverything } from '../../src/workbench/faults/leaving';
import { OutsideFault } from '../../src/workbench/faults/OutsideFault';
import { forgetFaults } from '../../src/workbench/faults/outside';
import { useProjectsOpen } from '../../src/workbench/faults/projects-open';
import { useBench } from '../../src/workbench/store/bench';
import { redrawn } from '../../src/workbench/store/changes';
import { Workbench } from '../../src/workbench/Workbench';

const fresh = useBench.getInitialState();
let saved: Blob[] = [];

beforeEach(() => {
  useBench.setState(fresh, true);
  useProjectsOpen.setState({ open: false });
  forgetFaults();
  saved = [];
  // React says every caught fault in the console; these are put in on purpose.
  vi.spyOn(console, 'error').mockImplementation(() => {});
  URL.createObjectURL = (blob) => {
    saved.push(blob as Blob);
    return 'blob:saved';
  };
  URL.revokeObjectURL = () => {};
});
afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
});

const putIn = (): never => {
  throw new Error('put in by a test');
};

const Broken = () => putIn();

/** Draws the width of the hem's allowance, but not of 3 cm. */
function Hem() {
  const hem = useBench((state) => state.project.allowances.hem);
  if (hem === 30) putIn();
  return <p>hem {hem}</p>;
}

const choose = (hem: number) => act(() => useBench.getState().choose('allowances.hem', hem));

describe('a fault while a part is drawn', () => {
  const guarded = (
    <Guarded what="The hem" place="finished">
      <Hem />
    </Guarded>
  );

  it('is told in one sentence over the last that could be drawn, and is gone with the next change', () => {
    choose(25);
    render(guarded);
    choose(30);
    expect(screen.getByRole('alert')).toHaveTextContent(/^The hem can’t be drawn because of an error in Legwork\./);
    expect(screen.getByText('hem 25')).toBeVisible();
    choose(35);
    expect(screen.queryByRole('alert')).toBeNull();
    expect(screen.getByText('hem 35')).toBeVisible();
  });

  it('is left by undo, which is named', async () => {
    choose(25);
    render(guarded);
    choose(30);
    await userEvent.click(screen.getByRole('button', { name: /^Undo / }));
    expect(useBench.getState().project.allowances.hem).toBe(25);
    expect(screen.queryByRole('alert')).toBeNull();
  });

  it('leaves the project, as it stands and not as it was drawn last, to be saved as a file', async () => {
    choose(30);
    render(guarded);
    await userEvent.click(screen.getByRole('button', { name: 'Save the project as a file' }));
    const opened = openProject(await (saved[0] as Blob).text());
    expect(opened.ok && opened.value.allowances.hem).toBe(30);
  });

  it('leads to another project, and to the page anew with everything kept before', async () => {
    const kept = vi.fn(() => Promise.reject(new Error('no shelf')));
    beforeLeaving(kept);
    choose(30);
    render(guarded);
    await userEvent.click(screen.getByRole('button', { name: 'Another project' }));
    expect(useProjectsOpen.getState().open).toBe(true);
    await keepEverything();
    expect(kept).toHaveBeenCalledOnce();
  });

  it('has details to open and to save, which say what was thrown and nothing of the project', async () => {
    choose(30);
    render(guarded);
    await userEvent.click(screen.getByText('Details of the error'));
    await userEvent.click(screen.getByRole('button', { name: 'save the details' }));
    const text = await (saved[0] as Blob).text();
    expect(text).toContain('The hem');
    expect(text).toContain('put in by a test');
    expect(text).not.toContain(useBench.getState().project.name);
  });

  it('shows nothing below where nothing of it can be drawn any more', () => {
    render(
      <Guarded what="The hem" place="finished">
        <Broken />
      </Guarded>,
    );
    expect(screen.getByRole('alert')).not.toHaveTextContent('Below');
  });

  it('of a bit of the drawing is told above the table', () => {
    render(
      <>
        <OutsideFault />
        <svg aria-label="drawing">
          <Guarded what="The chalk lines" place="bit">
            <Broken />
          </Guarded>
        </svg>
      </>,
    );
    expect(screen.getByRole('alert')).toHaveTextContent('The chalk lines can’t be drawn');
  });

  it('of the page leaves undo, the file, another project and the example', async () => {
    render(
      <Guarded what="The page" place="page" instead={(told) => <FaultPage {...told} />}>
        <Hem />
      </Guarded>,
    );
    // With nothing to undo.
    act(() => useBench.setState(({ project }) => redrawn(withValue(project, 'allowances.hem', 30))));
    expect(screen.queryByRole('button', { name: /^Undo/ })).toBeNull();
    await userEvent.click(screen.getByRole('button', { name: 'Open the example' }));
    expect(screen.getByText(/^hem /)).toBeVisible();
  });
});

describe('the workbench', () => {
  /** The present draft, with a fault where somebody asks for a part of it. */
  const broken = (part: 'checks' | 'sheets' | 'measures') => {
    const draft = Object.create(useBench.getState().draft, { [part]: { get: putIn, enumerable: true } });
    act(() => useBench.setState({ draft, project: { ...useBench.getState().project, name: 'Broken' } }));
  };

  it.each(['measures', 'sheets', 'checks'] as const)(
    'stays usable at every station, whatever of a draft can’t be found: its %s',
    async (part) => {
      render(<Workbench />);
      const drawn = document.querySelector('.drawing')?.innerHTML ?? '';
      expect(drawn.length).toBeGreaterThan(1000);
      broken(part);
      for (const station of ['leg', 'check', 'paper', 'sew'] as const) {
        act(() => useBench.getState().goTo(station));
        expect(document.querySelector('.fault-page'), station).toBeNull();
        expect(screen.getByLabelText('Name of the project'), station).toHaveValue('Broken');
        expect(screen.getByRole('button', { name: 'Body' }), station).toBeVisible();
        // What is left of the drawing is the last that was one.
        expect((document.querySelector('.drawing')?.innerHTML ?? '').length, station).toBeGreaterThan(1000);
      }
      act(() => useBench.setState(fresh, true));
      expect(screen.queryByText(/because of an error in Legwork/)).toBeNull();
    },
  );
});

describe('a late part', () => {
  const place = (Part: ReturnType<typeof late<object>>) =>
    render(
      <Suspense>
        <Part />
      </Suspense>,
    );

  it('that does not come is told, and comes when it is asked for again', async () => {
    const load = vi.fn().mockRejectedValueOnce(new TypeError('no network'));
    load.mockResolvedValue({ default: () => <p>here it is</p> });
    place(late(load, { what: say`The list`, place: 'inside' }));
    expect(await screen.findByRole('alert')).toHaveTextContent('The list could not be loaded.');
    await userEvent.click(screen.getByRole('button', { name: 'Try again' }));
    expect(await screen.findByText('here it is')).toBeVisible();
    expect(load).toHaveBeenCalledTimes(2);
  });

  it('comes by itself once the network is back', async () => {
    const load = vi.fn().mockRejectedValueOnce(new TypeError('no network'));
    load.mockResolvedValue({ default: () => <p>here it is</p> });
    place(late(load, { what: say`The list`, place: 'inside' }));
    await screen.findByRole('alert');
    act(() => void window.dispatchEvent(new Event('online')));
    expect(await screen.findByText('here it is')).toBeVisible();
  });

  it('in place of a sheet can be closed', async () => {
    const leave = vi.fn();
    const load = () => Promise.reject(new TypeError('no network'));
    place(late(load, { what: say`The list`, place: 'dialog', leave }));
    await userEvent.click(await screen.findByRole('button', { name: 'Close' }));
    expect(leave).toHaveBeenCalled();
  });

  it('that came, but can’t be drawn, is a fault like any other', async () => {
    place(late(() => Promise.resolve({ default: () => putIn() }), { what: say`The list`, place: 'inside' }));
    expect(await screen.findByRole('alert')).toHaveTextContent(
      'The list can’t be drawn because of an error in Legwork.',
    );
  });

  it('that is worked with is told above the table, and worked with when it came', async () => {
    render(<OutsideFault />);
    const load = vi.fn().mockRejectedValueOnce(new TypeError('no network')).mockResolvedValue(3);
    const work = vi.fn();
    withLate('The sewing', load, work);
    await userEvent.click(await screen.findByRole('button', { name: 'Try again' }));
    await waitFor(() => expect(work).toHaveBeenCalledWith(3));
    expect(screen.queryByRole('alert')).toBeNull();
  });
});
