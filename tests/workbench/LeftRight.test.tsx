import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, expect, it } from 'vitest';
import CheckStation from '../../src/workbench/stations/CheckStation';
import { useBench } from '../../src/workbench/store/bench';
import { pieceName } from '../names';

const fresh = useBench.getInitialState();
const bench = () => useBench.getState();
const names = () => bench().draft.pieces.map(pieceName);

beforeEach(() => useBench.setState({ ...fresh, station: 'check' }, true));
afterEach(cleanup);

it('takes at Check what one side has more, draws both legs, and takes it back in one press', async () => {
  render(<CheckStation />);
  await userEvent.click(screen.getByText('Left and right differ'));
  const hip = screen.getByLabelText('Left hip fuller');
  await waitFor(() => expect(hip).toHaveFocus());
  // Opened, and nothing typed yet: both legs are still cut from one piece.
  expect(names()).toEqual(['leg']);
  await userEvent.clear(hip);
  await userEvent.type(hip, '2');
  expect(bench().project.sides?.left?.fullerHip).toBe(20);
  expect(names()).toEqual(['leg left', 'leg right']);
  const check = screen.getByText('Left and right meet').closest('li');
  expect(check).toHaveTextContent('good');
  await userEvent.click(screen.getByText('Left and right are alike'));
  expect(bench().project.sides).toBeNull();
  expect(names()).toEqual(['leg']);
  await waitFor(() => expect(screen.getByText('Left and right differ')).toHaveFocus());
});

it('says beside the field that more than can be drawn is too much', async () => {
  render(<CheckStation />);
  await userEvent.click(screen.getByText('Left and right differ'));
  const longer = screen.getByLabelText('Right leg longer');
  await userEvent.clear(longer);
  await userEvent.type(longer, '9');
  expect(longer).toHaveAccessibleDescription(/Must be 0 to 6 cm\./);
});
