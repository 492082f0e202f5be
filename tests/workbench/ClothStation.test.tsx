import '@testing-library/jest-dom/vitest';
import { act, cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { clothOf } from '../../src/project';
import { useBench } from '../../src/workbench/store/bench';
import { useTable } from '../../src/workbench/table/table-state';
import { Workbench } from '../../src/workbench/Workbench';
import { pieceName } from '../names';

const fresh = useBench.getInitialState();
const bench = () => useBench.getState();
const bought = () => {
  const { answer } = clothOf(bench().draft);
  return answer.fits ? answer.lay.toBuy : Number.NaN;
};
/** Lays are looked for when nothing has changed for a moment. */
const PATIENT = { timeout: 30_000 };

beforeEach(() => {
  useBench.setState({ ...fresh, station: 'cloth' }, true);
  // Legs that lie on one length only if their forks are pieced.
  bench().choose('body.hipGirth', 1060);
  bench().choose('cloth.width', 1450);
});
afterEach(() => {
  act(() => useTable.getState().hold(undefined));
  cleanup();
});

it('offers at Cloth what saves cloth, at one press that one undo takes back', async () => {
  render(<Workbench />);
  const button = await screen.findByRole('button', { name: 'Piece the fork’s tip, 5 cm' }, PATIENT);
  expect(button.closest('li')).toHaveTextContent(/Buy [\d.]+ m instead of [\d.]+ m\./);
  const before = bought();
  await userEvent.click(button);
  expect(bench().project.cloth.piecedTip).toBe(50);
  expect(bench().draft.pieces.map(pieceName)).toContain('fork tip');
  expect(bought()).toBeLessThan(before - 100);
  expect(document.activeElement).toHaveTextContent(/^Buy /);
  act(() => bench().undo());
  expect(bench().project.cloth.piecedTip).toBe(0);
  expect(bought()).toBeCloseTo(before, 6);
});

it('looks for nothing while something on the drawing is held', async () => {
  useTable.getState().hold('hem');
  render(<Workbench />);
  await screen.findByText('Laying it in other ways …', {}, PATIENT);
  await new Promise((resolve) => setTimeout(resolve, 1_000));
  expect(document.querySelector('.savings')).toBeNull();
  act(() => useTable.getState().hold(undefined));
  await screen.findByRole('button', { name: 'Piece the fork’s tip, 5 cm' }, PATIENT);
});
