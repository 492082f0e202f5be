import '@testing-library/jest-dom/vitest';
import { act, cleanup, render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { checksOf } from '../../src/project';
import { useBench } from '../../src/workbench/store/bench';
import { lightPlace } from '../../src/workbench/view/lit-place';
import { Workbench } from '../../src/workbench/Workbench';

const start = useBench.getInitialState();
const bench = () => useBench.getState();
const zoomed = () => document.querySelector<SVGGElement>('.drawing')?.style.transform;
const lit = () => document.querySelector('.lit-chalk')?.getAttribute('d');
const list = () => within(document.querySelector('.path') as HTMLElement);

beforeEach(() => {
  useBench.setState({ ...start, station: 'check' }, true);
  bench().choose('leg.straighten', 0);
});
afterEach(() => {
  act(() => lightPlace(undefined));
  cleanup();
});

describe('the station Check', () => {
  it('folds the good ones to a line, and there is one list on the screen', async () => {
    render(<Workbench />);
    const pullsOn = await screen.findByRole('button', { name: 'It can be pulled on' });
    const all = checksOf(bench().draft);
    const good = all.filter(({ verdict }) => verdict === 'good');
    expect(good.length).toBeLessThan(all.length);
    const folded = screen.getByText(`${good.length} checks are good`).closest('details') as HTMLElement;
    expect(folded).not.toHaveAttribute('open');
    expect(within(folded).getAllByRole('listitem', { hidden: true })).toHaveLength(good.length);
    expect(folded).not.toContainElement(pullsOn);
    expect(screen.queryByRole('heading', { name: 'Checks' })).toBeNull();
  });

  it('keeps what is mended in sight, and says in a line that all are good where they are', async () => {
    render(<Workbench />);
    const pullsOn = await screen.findByRole('button', { name: 'It can be pulled on' });
    act(() => bench().choose('leg.straighten', 'auto'));
    expect(pullsOn.closest('li')).toHaveTextContent(/^good/);
    expect(pullsOn.closest('details')).toBeNull();
    act(() => bench().goTo('edges'));
    expect(screen.getByText(/^All \d+ checks are good$/)).toBeVisible();
  });

  it('lights the place of a check on the drawing and comes near to it, by a key too; a second press puts it out', async () => {
    render(<Workbench />);
    const button = await screen.findByRole('button', { name: 'It can be pulled on' });
    const whole = zoomed();
    button.focus();
    await userEvent.keyboard('{Enter}');
    expect(button).toHaveAttribute('aria-pressed', 'true');
    expect(lit()).toMatch(/^M/);
    expect(zoomed()).not.toBe(whole);
    await userEvent.keyboard('{Enter}');
    expect([lit(), zoomed()]).toEqual([undefined, whole]);
  });

  it('lets the place go when the whole drawing is wanted again, and with the station', async () => {
    render(<Workbench />);
    const button = await screen.findByRole('button', { name: 'It can be pulled on' });
    const whole = zoomed();
    await userEvent.click(button);
    await userEvent.click(screen.getByRole('button', { name: 'Fit' }));
    expect([button.getAttribute('aria-pressed'), zoomed()]).toEqual(['false', whole]);
    await userEvent.click(button);
    act(() => bench().goTo('cloth'));
    await waitFor(() => expect(lit()).toBeUndefined());
  });

  it('follows the draft: what is lit is where the check looks now', async () => {
    render(<Workbench />);
    await userEvent.click(await screen.findByRole('button', { name: 'It can be pulled on' }));
    const before = lit();
    act(() => bench().choose('leg.spread', 60));
    await waitFor(() => expect(lit()).not.toBe(before));
    expect(lit()).toMatch(/^M/);
  });
});

it('is led to by what wants a look beside the drawing at every other station', async () => {
  act(() => bench().goTo('edges'));
  render(<Workbench />);
  await userEvent.click(screen.getByRole('button', { name: 'It can be pulled on' }));
  await waitFor(() => expect(lit()).toMatch(/^M/));
  expect(bench().station).toBe('check');
  const row = await list().findByRole('button', { name: 'It can be pulled on' });
  expect(row).toHaveAttribute('aria-pressed', 'true');
  await waitFor(() => expect(row).toHaveFocus());
});
