import '@testing-library/jest-dom/vitest';
import { act, cleanup, render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { useHelpOpen } from '../../../src/workbench/help/help-open';
import { useBench } from '../../../src/workbench/store/bench';
import { Workbench } from '../../../src/workbench/Workbench';

const start = useBench.getInitialState();
const dialog = () => screen.findByRole('dialog', { name: 'Help' });

beforeEach(() => useBench.setState({ ...start }, true));
afterEach(() => {
  act(() => useHelpOpen.setState({ open: false }));
  cleanup();
});

it('opens by its key, though not while somebody types it, and by its button, with the list of keys', async () => {
  render(<Workbench />);
  await userEvent.type(screen.getByLabelText('Name of the project'), '?');
  expect(screen.queryByRole('dialog')).toBeNull();
  act(() => document.querySelector<HTMLElement>('.table-window')?.focus());
  await userEvent.keyboard('?');
  const help = within(await dialog());
  expect(help.getByText('undo')).toBeVisible();
  expect(help.getByRole('heading', { name: 'In show mode' })).toBeVisible();
  await userEvent.keyboard('{Escape}');
  await waitFor(() => expect(screen.queryByRole('dialog')).toBeNull());
  await userEvent.click(screen.getByRole('button', { name: 'Help' }));
  await dialog();
});

it('finds a measurement, shows where the tape goes, and leads to its field', async () => {
  render(<Workbench />);
  await userEvent.click(screen.getByRole('button', { name: 'Help' }));
  const help = within(await dialog());
  await userEvent.type(help.getByRole('searchbox', { name: 'Look for' }), 'body rise');
  await waitFor(() => expect(help.getByRole('status')).toHaveTextContent(/^\d+ found$/));
  const first = help.getAllByRole('listitem')[0] as HTMLElement;
  await userEvent.click(within(first).getByText('Body rise', { exact: true }));
  const picture = await within(first).findByRole('img', { name: 'Body rise' });
  await waitFor(() => expect(picture.querySelector('.tape-lit')).not.toBeNull());
  await userEvent.click(within(first).getByRole('button', { name: 'Show me where' }));
  expect(screen.queryByRole('dialog')).toBeNull();
  expect(useBench.getState().station).toBe('body');
  await waitFor(() => expect(screen.getByRole('textbox', { name: 'Body rise' })).toHaveFocus());
});

it('lights the place of a check, and of a step of the sewing shows its picture', async () => {
  render(<Workbench />);
  await userEvent.click(screen.getByRole('button', { name: 'Help' }));
  const help = within(await dialog());
  const search = help.getByRole('searchbox', { name: 'Look for' });
  await userEvent.type(search, 'inseams equal');
  await userEvent.click(await help.findByText('Inseams equal'));
  expect(
    (await help.findByRole('img', { name: 'Inseams equal' })).querySelector('.lit-ink')?.getAttribute('d'),
  ).toMatch(/^M/);
  await userEvent.clear(search);
  await userEvent.type(search, 'zzz');
  await help.findByText('Nothing found.');
});
