import { act, cleanup, render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { sewingOf } from '../../src/project';
import { isSaid, UNSAID, words } from '../../src/words';
import { useBench } from '../../src/workbench/store/bench';
import { Workbench } from '../../src/workbench/Workbench';
import { useSewingShown } from '../../src/workbench/working/sewing-shown';

const start = useBench.getInitialState();

beforeEach(() => {
  useBench.setState({ ...start, station: 'sew' }, true);
  useSewingShown.setState({ shown: undefined });
});
afterEach(cleanup);

const step = () => screen.getByRole('region', { name: 'Step of the sewing' });
const drawing = () => screen.getByRole('main', { name: 'Table' }).querySelector('svg[role="img"]');

describe('the station Sew', () => {
  it('goes through the steps by Next and Back, the picture with them', async () => {
    render(<Workbench />);
    const steps = sewingOf(useBench.getState().draft);
    const titleOf = (i: number) => words`${steps[i]?.title ?? UNSAID}`;
    // The station is loaded when somebody goes there, its picture a moment later.
    await screen.findByRole('region', { name: 'Step of the sewing' });
    await waitFor(() => expect(drawing()?.querySelectorAll('.face').length).toBeGreaterThan(0));
    expect(within(step()).getByRole('heading')).toHaveProperty('textContent', titleOf(0));
    const before = drawing()?.getAttribute('aria-label');
    await userEvent.click(within(step()).getByRole('button', { name: 'Next' }));
    expect(within(step()).getByRole('heading').textContent).toBe(titleOf(1));
    expect(within(step()).getByRole('status').textContent).toBe(`Step 2 of ${steps.length}`);
    expect(document.activeElement).toBe(within(step()).getByRole('heading'));
    expect(drawing()?.getAttribute('aria-label')).not.toBe(before);
    expect(drawing()?.querySelectorAll('.face').length).toBeGreaterThan(0);
    await userEvent.click(within(step()).getByRole('button', { name: 'Back' }));
    expect(within(step()).getByRole('heading').textContent).toBe(titleOf(0));
  });

  it('says what to take care of before what is to be done', async () => {
    render(<Workbench />);
    const careful = sewingOf(useBench.getState().draft).find(({ care }) => isSaid(care));
    act(() => useSewingShown.getState().show(careful?.id as string));
    const care = await within(await screen.findByRole('region', { name: 'Step of the sewing' })).findByText(
      'Take care:',
    );
    const [task] = within(step()).getAllByRole('listitem');
    expect(care.compareDocumentPosition(task as HTMLElement)).toBe(Node.DOCUMENT_POSITION_FOLLOWING);
  });

  it('stays at its step when a choice changes the ones before it', async () => {
    render(<Workbench />);
    act(() => useSewingShown.getState().show('inseams'));
    act(() => useBench.getState().choose('pocket', { width: 150, height: 165, facing: 30, part: 'back', count: 1 }));
    expect((await screen.findByRole('heading', { name: 'Sew the inseams' })).textContent).toBe('Sew the inseams');
  });

  it('changes the settings with the machine, as one change to undo', async () => {
    render(<Workbench />);
    act(() => useSewingShown.getState().show('inseams'));
    act(() => useBench.getState().choose('cloth.kind', 'knit'));
    expect(await screen.findByText(/narrow zigzag, 2.5 mm long/)).toBeTruthy();
    await userEvent.click(screen.getByRole('radio', { name: 'overlocker too' }));
    expect(screen.getByText(/4 threads/)).toBeTruthy();
    act(() => useBench.getState().undo());
    expect(useBench.getState().project.sewing.machine).toBe('plain');
  });
});
