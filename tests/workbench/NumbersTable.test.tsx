import '@testing-library/jest-dom/vitest';
import { act, cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { numbersOf } from '../../src/trace';
import BlocksStation from '../../src/workbench/stations/BlocksStation';
import { useBench } from '../../src/workbench/store/bench';
import BlocksDrawing from '../../src/workbench/table/drawings/BlocksDrawing';
import { atExample } from './at-example';

beforeEach(() => useBench.setState({ ...atExample, station: 'blocks' }, true));
afterEach(cleanup);

const block = () => useBench.getState().project.block;
const drawn = (part: 'front' | 'back') => numbersOf(useBench.getState().draft.blocks[part]);
const choose = (name: RegExp) => userEvent.click(screen.getByRole('button', { name }));
const field = (name: string) => screen.getByRole('textbox', { name });
/** The drawing beside the fields, as the table has it. */
function Beside() {
  const draft = useBench((state) => state.draft);
  return (
    <svg>
      <title>blocks</title>
      <BlocksDrawing draft={draft} />
    </svg>
  );
}

describe('blocks by numbers', () => {
  it('are one of the four ways to have blocks, and undone in one step', async () => {
    render(<BlocksStation />);
    await choose(/^By numbers/);
    expect(block()).toEqual({ source: 'numbers', front: {}, back: {} });
    expect(screen.getByRole('button', { name: /^By numbers/ })).toHaveAttribute('aria-current', 'true');
    act(() => useBench.getState().undo());
    expect(block().source).toBe('drafted');
  });

  it('are redrawn with each number, what is not measured following by proportion', async () => {
    render(<BlocksStation />);
    await choose(/^By numbers/);
    const before = drawn('front');
    await userEvent.type(field('Front, width at the hip line'), '40');
    expect(drawn('front').hipWidth).toBeCloseTo(400, 0);
    expect(drawn('front').hemWidth).toBeGreaterThan(1.2 * before.hemWidth);
    expect(field('Front, width at the hem')).toHaveAttribute('placeholder', expect.stringMatching(/^est\. \d/));
  });

  it('light where the tape lies for the field that has the focus, and for none else', async () => {
    render(
      <>
        <BlocksStation />
        <Beside />
      </>,
    );
    await choose(/^By numbers/);
    const lit = () => document.querySelectorAll('.tape-lit');
    expect(lit()).toHaveLength(0);
    await userEvent.click(field('Front, along the inseam'));
    expect(lit()).toHaveLength(1);
    const first = lit()[0]?.getAttribute('d');
    await userEvent.click(field('Front, fork'));
    expect(lit()[0]?.getAttribute('d')).not.toBe(first);
  });

  it('say beside the number that the others contradict how far it is off', async () => {
    render(<BlocksStation />);
    await choose(/^By numbers/);
    const { darts: _none, ...front } = drawn('front');
    act(() => useBench.getState().choose('block.front', { ...front, inseam: front.inseam + 20 }));
    expect(await screen.findByText(/Front, along the inseam: .* less; it is drawn with/)).toBeVisible();
  });

  it('have darts, each with three numbers of its own', async () => {
    render(<BlocksStation />);
    await choose(/^By numbers/);
    await userEvent.click(screen.getAllByText('Darts')[0] as HTMLElement);
    await userEvent.click(screen.getAllByRole('button', { name: 'Add a dart', hidden: true })[0] as HTMLElement);
    expect(useBench.getState().draft.blocks.front.darts).toHaveLength(1);
    await userEvent.clear(field('Front, dart 1: takes in'));
    await userEvent.type(field('Front, dart 1: takes in'), '3');
    expect(block()).toMatchObject({ front: { darts: [{ intake: 30, length: 100 }] } });
    await userEvent.click(screen.getByRole('button', { name: 'Take this dart away' }));
    expect(block()).toEqual({ source: 'numbers', front: {}, back: {} });
  });
});
