import '@testing-library/jest-dom/vitest';
import { act, cleanup, render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { writeBlocksSvg } from '../../src/files/svg/blocks';
import { exampleProject, saveProject, workingOf } from '../../src/project';
import { printPhrase } from '../../src/words';
import { useBench } from '../../src/workbench/store/bench';
import { Workbench } from '../../src/workbench/Workbench';

// This document has no workers: the drawing is read on the spot, by the same reader.
vi.mock('../../src/workbench/open/read-drawing', async () => {
  const { readDrawing } = await import('../../src/files');
  return { readDrawing };
});

const fresh = useBench.getInitialState();
const drawn = () => document.querySelector('.drawing')?.innerHTML ?? '';

beforeEach(() => useBench.setState(fresh, true));
afterEach(cleanup);

describe('the workbench', () => {
  it('opens on the finished example with its casing folded over', () => {
    render(<Workbench />);
    expect(document.querySelectorAll('.folded-over').length).toBe(2);
    expect(screen.getByRole('button', { name: 'Edges' })).toHaveAttribute('aria-expanded', 'true');
  });

  it('lays the turnings flat on request', async () => {
    render(<Workbench />);
    await userEvent.click(screen.getByRole('radio', { name: 'laid flat' }));
    expect(document.querySelectorAll('.folded-over').length).toBe(0);
  });

  it.each(['Body', 'Blocks', 'Leg', 'Check', 'Paper'])('opens the station %s with its own drawing', async (name) => {
    render(<Workbench />);
    const before = drawn();
    await userEvent.click(screen.getByRole('button', { name }));
    expect(screen.getByRole('button', { name })).toHaveAttribute('aria-expanded', 'true');
    expect(drawn()).not.toBe(before);
  });

  it('lights the lines of a step of the working that is pointed at', async () => {
    render(<Workbench />);
    await userEvent.click(screen.getByRole('button', { name: 'Leg' }));
    await userEvent.click(screen.getByRole('button', { name: 'Working' }));
    const working = await screen.findByRole('region', { name: 'Working of Leg' });
    const step = workingOf(useBench.getState().draft).find((one) => one.station === 'leg' && one.lines.length > 0);
    const words = step ? printPhrase(step.sentence, 'cm') : '';
    const button = within(working).getByText(words).closest('button');
    if (!button) throw new Error('no step with lines at the leg');
    await userEvent.hover(button);
    expect(document.querySelector('.lit')).toHaveAttribute('data-step', step?.id);
    await userEvent.unhover(button);
    expect(document.querySelector('.lit')).toBeNull();
  });

  it('opens a project from a file', async () => {
    render(<Workbench />);
    const file = new File([saveProject({ ...exampleProject, name: 'Sunday' })], 'sunday.legwork.json');
    await userEvent.upload(screen.getByLabelText('Project file'), file);
    await waitFor(() => expect(screen.getByLabelText('Name of the project')).toHaveValue('Sunday'));
  });

  it('brings blocks from a drawing as one step to undo, and speaks of one that holds none', async () => {
    render(<Workbench />);
    await userEvent.click(screen.getByRole('button', { name: 'Blocks' }));
    const field = () => screen.getByLabelText('Drawing of the blocks');
    const drawing = writeBlocksSvg(useBench.getState().draft);
    await userEvent.upload(field(), new File([drawing], 'mine.blocks.svg', { type: 'image/svg+xml' }));
    await screen.findByText(/The blocks of “mine.blocks.svg” are on the table/, {}, { timeout: 20_000 });
    expect(useBench.getState().project.block.source).toBe('drawn');
    expect(useBench.getState().problems).toEqual([]);
    expect(screen.getByText(/^These blocks were brought along\./)).toBeVisible();
    const without = drawing.replace(/<path id="back-hem"[^>]*\/>/, '');
    await userEvent.upload(field(), new File([without], 'half.svg', { type: 'image/svg+xml' }));
    await screen.findByText(
      /“half.svg” can’t be opened. Back-hem: must be drawn, as a line of that name./i,
      {},
      { timeout: 20_000 },
    );
    act(() => useBench.getState().undo());
    expect(screen.getByLabelText('Ease at the hip')).toBeVisible();
  });

  it('refuses a broken file in a sentence and loses nothing', async () => {
    render(<Workbench />);
    const before = drawn();
    const file = new File(['{"format":"legwork-project",'], 'half.legwork.json', { type: 'application/json' });
    await userEvent.upload(screen.getByLabelText('Project file'), file);
    expect(await screen.findByRole('alert')).toHaveTextContent(
      /“half\.legwork\.json” isn’t a project file: .*Nothing here was changed\./,
    );
    expect(drawn()).toBe(before);
  });

  it('leads from the drawing to the field that asks', async () => {
    render(<Workbench />);
    await userEvent.click(screen.getByRole('button', { name: 'Body' }));
    await userEvent.type(screen.getByRole('textbox', { name: 'Hip' }), 'x');
    await userEvent.click(screen.getByRole('button', { name: 'Leg' }));
    await userEvent.click(screen.getByRole('button', { name: 'go there' }));
    await waitFor(() => expect(screen.getByRole('textbox', { name: 'Hip' })).toHaveFocus());
  });

  it('leaves blocks that were brought along as they are, until they are given up', async () => {
    const { blocks } = useBench.getState().draft;
    const traced = (part: 'front' | 'back') => ({
      edges: Object.fromEntries(
        blocks[part].edges.map(({ name, curves }) => [name, curves.map((curve) => curve.map(({ x, y }) => [x, y]))]),
      ),
      grainline: blocks[part].grainline.map(({ x, y }) => [x, y]),
      hipLevel: blocks[part].hipLevel,
    });
    const project = { ...exampleProject, block: { source: 'drawn', front: traced('front'), back: traced('back') } };
    useBench.getState().open(JSON.stringify(project), 'own.legwork.json');
    render(<Workbench />);
    await userEvent.click(screen.getByRole('button', { name: 'Blocks' }));
    expect(screen.queryByRole('textbox', { name: 'Balance' })).toBeNull();
    await userEvent.click(screen.getByRole('button', { name: /Drafted from the body/ }));
    expect(screen.getByRole('textbox', { name: 'Balance' })).toBeVisible();
  });
});
