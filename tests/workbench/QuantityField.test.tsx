import { say } from '../../src/words';
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { QuantityField } from '../../src/workbench/fields/QuantityField';
import { useBench } from '../../src/workbench/store/bench';
import { length } from '../../src/workbench/store/quantity';

const fresh = useBench.getInitialState();

function showHip(units: 'cm' | 'inch') {
  useBench.getState().showUnits(units);
  render(<QuantityField path="body.hipGirth" quantity={length} help={say`Round the seat.`} />);
  return screen.getByRole('textbox', { name: 'Hip' });
}

beforeEach(() => useBench.setState(fresh, true));
afterEach(cleanup);

describe('a length field', () => {
  it('never rewrites the text under the typist, and prints it tidily when it is left', async () => {
    const user = userEvent.setup();
    const field = showHip('inch');
    await user.clear(field);
    await user.type(field, '40 1/8');
    expect(field).toHaveValue('40 1/8');
    expect(useBench.getState().project.body.hipGirth).toBeCloseTo(1019.175, 6);
    await user.tab();
    expect(field).toHaveValue('40⅛');
  });

  it('reads a unit that is written after the number, whatever the display', async () => {
    const user = userEvent.setup();
    const field = showHip('cm');
    await user.clear(field);
    await user.type(field, '40in');
    await user.tab();
    expect(field).toHaveValue('101.6');
  });

  it('keeps what it can not read, with one sentence beside it that describes it', async () => {
    const user = userEvent.setup();
    const field = showHip('cm');
    await user.clear(field);
    await user.type(field, '98 or so');
    await user.tab();
    expect(field).toHaveValue('98 or so');
    expect(field).toBeInvalid();
    expect(field).toHaveAccessibleDescription(/“98 or so” isn’t a length; write it like/);
  });

  it('steps by a millimetre with the arrow keys, by a centimetre with shift', async () => {
    const user = userEvent.setup();
    const field = showHip('cm');
    await user.clear(field);
    await user.type(field, '98{ArrowUp}');
    expect(field).toHaveValue('98.1');
    await user.keyboard('{Shift>}{ArrowDown}{/Shift}');
    expect(field).toHaveValue('97.1');
  });

  it('shows a value in the other unit as soon as that is chosen', () => {
    const field = showHip('cm');
    const before = (field as HTMLInputElement).value;
    expect(before).not.toBe('');
    cleanup();
    expect(showHip('inch')).not.toHaveValue(before);
  });

  it('shows an estimate where nothing was measured, and does not take it for a measurement', () => {
    render(<QuantityField path="body.kneeGirth" quantity={length} optional instead={384} />);
    expect(screen.getByRole('textbox', { name: 'Knee' })).toHaveAttribute('placeholder', 'est. 38.4');
    expect(useBench.getState().project.body.kneeGirth).toBeUndefined();
  });
});
