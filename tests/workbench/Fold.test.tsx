import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, expect, it } from 'vitest';
import EdgesStation from '../../src/workbench/stations/EdgesStation';
import { useBench } from '../../src/workbench/store/bench';

const fresh = useBench.getInitialState();

beforeEach(() => useBench.setState(fresh, true));
afterEach(cleanup);

const fold = (name: string) => screen.getByText(name).closest('details') as HTMLDetailsElement;

it('tells on the fold what isn’t as usual there, and nothing where all is', () => {
  render(<EdgesStation />);
  expect(fold('More at the waist').querySelector('summary')).toHaveTextContent(/^More at the waist$/);
  useBench.getState().choose('waist.turnOfCloth', 6);
  useBench.getState().choose('waist.rows', 2);
  cleanup();
  render(<EdgesStation />);
  expect(fold('More at the waist').querySelector('.fold-told')).toHaveTextContent(
    'Rows of elastic, Turn of the cloth 0.6 cm',
  );
});

it('opens where a folded field has to be put right', () => {
  render(<EdgesStation />);
  expect(fold('Seam allowances').open).toBe(false);
  useBench.getState().choose('allowances.inseam', 400);
  cleanup();
  render(<EdgesStation />);
  expect(fold('Seam allowances').open).toBe(true);
  expect(screen.getByText('Must be 0 to 4 cm.')).toBeInTheDocument();
});

it('says a field’s limits only where they are broken', async () => {
  const user = userEvent.setup();
  render(<EdgesStation />);
  const depth = screen.getByRole('textbox', { name: 'Hem depth' });
  expect(depth).not.toHaveAccessibleDescription(/12/);
  await user.clear(depth);
  await user.type(depth, '40');
  expect(depth).toHaveAccessibleDescription(/Must be 0.5 to 12 cm\./);
});

it('brings fractions and keeps the field for a phone whose pad of numbers has none', async () => {
  const user = userEvent.setup();
  useBench.getState().showUnits('inch');
  render(<EdgesStation />);
  const depth = screen.getByRole('textbox', { name: 'Hem depth' });
  expect(depth).toHaveAttribute('inputmode', 'decimal');
  await user.clear(depth);
  await user.type(depth, '1');
  await user.click(screen.getByRole('button', { name: '½' }));
  expect(depth).toHaveValue('1½');
  expect(depth).toHaveFocus();
  expect(useBench.getState().project.hem.depth).toBeCloseTo(38.1, 6);
});
