import '@testing-library/jest-dom/vitest';
import { act, cleanup, render, screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { outlineEdge, pathEnd, pathLength } from '../../src/plane';
import { numbersOf, tracedEdges } from '../../src/trace';
import { say } from '../../src/words';
import BlocksStation from '../../src/workbench/stations/BlocksStation';
import { useBench } from '../../src/workbench/store/bench';
import BlocksDrawing from '../../src/workbench/table/drawings/BlocksDrawing';
import { atExample } from './at-example';

const blocks = () => useBench.getState().draft.blocks;
const inseam = (part: 'front' | 'back') => pathLength(outlineEdge(blocks()[part].edges, 'inseam').curves);

/** The example's blocks as somebody's own, the back with its legs 6 mm longer. */
function bringOwn(): void {
  const traced = (part: 'front' | 'back') => {
    const { edges, grainline, hipLevel } = blocks()[part];
    const down = part === 'back' ? 6 : 0;
    const [top, bottom] = grainline.map(({ x, y }) => [x, y] as const) as [[number, number], [number, number]];
    const moved = edges.map(({ name, curves }) => ({
      name,
      curves: curves.map((curve) => curve.map(({ x, y }) => ({ x, y: y > 700 ? y + down : y })) as never),
    }));
    return { edges: tracedEdges(moved), grainline: [top, bottom] as const, hipLevel };
  };
  const pair = { front: traced('front'), back: traced('back') };
  useBench.getState().takeBlocks({ source: 'drawn', ...pair }, say`They are here.`, false);
}

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

beforeEach(() => {
  useBench.setState({ ...atExample, station: 'blocks' }, true);
  bringOwn();
});
afterEach(cleanup);

it('says what a pair differs by, trues it at a press, and keeps what was brought as a dotted line', async () => {
  render(<BlocksStation />);
  const { container } = render(<Beside />);
  const before = inseam('back');
  expect(before - inseam('front')).toBeGreaterThan(4);
  expect(container.querySelector('.chalk-line')).toBeNull();
  expect(screen.getByText(/^The inseams are .* in front and .* behind\.$/)).toBeInTheDocument();
  await userEvent.click(screen.getByRole('button', { name: /^True the inseams: lower the back crotch point by/ }));
  expect(useBench.getState().project.block).toMatchObject({ trued: ['inseams'] });
  expect(Math.abs(inseam('back') - inseam('front'))).toBeLessThan(0.01);
  expect(container.querySelector('.chalk-line')).not.toBeNull();
  await userEvent.click(screen.getByRole('button', { name: 'As it was brought: inseams' }));
  expect(inseam('back')).toBeCloseTo(before, 6);
  expect(useBench.getState().project.block).not.toHaveProperty('trued');
  act(() => useBench.getState().undo());
  expect(Math.abs(inseam('back') - inseam('front'))).toBeLessThan(0.01);
});

it('takes off the allowances of the paper, one edge at a time', async () => {
  render(<BlocksStation />);
  const hip = numbersOf(blocks().front).hipWidth;
  await userEvent.type(screen.getByRole('textbox', { name: 'On the paper, at the side' }), '1.5');
  expect(numbersOf(blocks().front).hipWidth).toBeCloseTo(hip - 15, 0);
  const hem = pathEnd(outlineEdge(blocks().front.edges, 'inseam').curves).y;
  await userEvent.type(screen.getByRole('textbox', { name: 'On the paper, at the hem' }), '3');
  expect(pathEnd(outlineEdge(blocks().front.edges, 'inseam').curves).y).toBeCloseTo(hem - 30, 0);
});

it('does the same for blocks by numbers', async () => {
  const { front, back } = blocks();
  const numbers = { front: numbersOf(front), back: numbersOf(back) };
  useBench.getState().takeBlocks({ source: 'numbers', ...numbers }, say`They are here.`, false);
  render(<BlocksStation />);
  await userEvent.click(screen.getByRole('button', { name: /^Level the hems/ }));
  expect(useBench.getState().project.block).toMatchObject({ source: 'numbers', trued: ['hem'] });
});

it('tells what the blocks say of their wearer, and takes it where no tape was, never over a tape', async () => {
  const { hipGirth: _, ...others } = useBench.getState().project.body;
  act(() => useBench.getState().choose('body', { ...others, bodyRise: 'estimated' }));
  render(<BlocksStation />);
  expect(screen.getByText(/^Inside leg: .* by the blocks, .* by the tape\.$/)).toBeInTheDocument();
  expect(screen.queryByRole('button', { name: 'Take inside leg from the blocks' })).toBeNull();
  // Its darts are lines like others.
  expect(screen.queryByText(/^Waist: /)).toBeNull();
  expect(useBench.getState().problems.map(({ field }) => field)).toContain('body.hipGirth');
  await userEvent.click(screen.getByRole('button', { name: 'Take hip from the blocks' }));
  await userEvent.click(screen.getByRole('button', { name: 'Take body rise from the blocks' }));
  const { draft, problems, project } = useBench.getState();
  expect(problems).toEqual([]);
  expect(project.body).not.toHaveProperty('hipGirth');
  expect(project.body.fromBlock).toEqual(['hipGirth', 'bodyRise']);
  expect(draft.body.estimates.filter(({ basis }) => basis === 'block').map(({ key }) => key)).toEqual([
    'hipGirth',
    'bodyRise',
  ]);
  // The ease that somebody knows of their blocks tells another body.
  await userEvent.type(screen.getByRole('textbox', { name: 'Ease at the hip' }), '10');
  await waitFor(() =>
    expect(useBench.getState().draft.body.hipGirth).toBeCloseTo(draft.body.hipGirth + 50.8 - 100, -0.5),
  );
  await userEvent.click(screen.getByRole('button', { name: 'Don’t take body rise from the blocks' }));
  expect(useBench.getState().project.body.fromBlock).toEqual(['hipGirth']);
  act(() => useBench.getState().undo());
  expect(useBench.getState().project.body.fromBlock).toEqual(['hipGirth', 'bodyRise']);
});
