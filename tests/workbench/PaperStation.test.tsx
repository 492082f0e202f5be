import '@testing-library/jest-dom/vitest';
import { act, cleanup, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { SINGLE_FILES } from '../../src/files';
import { sheetsOf, withFewestSheets } from '../../src/project';
import { useClassOpen } from '../../src/workbench/class/class-open';
import { useBench } from '../../src/workbench/store/bench';
import { useTaking } from '../../src/workbench/take/taking';
import { Workbench } from '../../src/workbench/Workbench';

const start = useBench.getInitialState();
const group = (name: string) => within(screen.getByRole('group', { name }));

beforeEach(() => useBench.setState({ ...start, station: 'paper' }, true));
afterEach(() => {
  act(() => {
    useTaking.setState(useTaking.getInitialState(), true);
    useClassOpen.setState({ open: false });
  });
  cleanup();
});

describe('the station Paper', () => {
  it('begins with the pattern and its true count, which follows the paper', async () => {
    render(<Workbench />);
    const button = await screen.findByRole('button', { name: /^Print the pattern: \d+ sheets/ });
    const count = () => sheetsOf(useBench.getState().draft).sheets.length;
    expect(button).toHaveTextContent(`Print the pattern: ${count()} sheets`);
    expect(button.closest('.stop-inside')?.querySelector('button, input')).toBe(button);
    const before = count();
    act(() => useBench.getState().choose('paper.sheet', 'A3'));
    expect(count()).toBeLessThan(before);
    expect(button).toHaveTextContent(`Print the pattern: ${count()} sheets`);
    act(() => useBench.getState().choose('paper.scale', 1 / 4));
    expect(button).toHaveTextContent('Print the sample');
  });

  it('sets the margin to the number that was read at the edges of the test page', async () => {
    render(<Workbench />);
    const number = await screen.findByRole('combobox', { name: 'Number at the edges' });
    expect(number).toHaveDisplayValue('not read');
    await userEvent.selectOptions(number, '8');
    const paper = () => useBench.getState().project.paper;
    expect(paper()).toMatchObject({ margin: 8, printerMargin: 8 });
    const margin = screen.getByRole('textbox', { name: 'Margin' });
    expect(margin).toHaveValue('0.8');
    act(() => useBench.getState().choose('paper.margin', 5));
    expect(number).toHaveDisplayValue('8: margin 0.8 cm');
    expect(margin.closest('.field')).toHaveTextContent('The test page showed a margin of 0.8 cm');
    act(() => useBench.getState().undo());
    act(() => useBench.getState().undo());
    expect(paper()).toMatchObject({ margin: 10, printerMargin: 'auto' });
  });

  it('offers a narrower margin where it saves sheets, by one press that keeps its word and that one undo takes back', async () => {
    act(() => useBench.getState().choose('paper.margin', 20));
    render(<Workbench />);
    const button = await screen.findByRole('button', { name: /^Set the margin to / }, { timeout: 30_000 });
    const said = /would save (\d+) sheets?\./.exec(button.closest('li')?.textContent ?? '');
    const count = () => sheetsOf(withFewestSheets(useBench.getState().draft)).sheets.length;
    const before = count();
    await userEvent.click(button);
    expect(useBench.getState().project.paper.margin).toBeLessThan(20);
    expect(before - count()).toBe(Number(said?.[1]));
    expect(screen.getByRole('combobox', { name: 'Paper' })).toHaveFocus();
    act(() => useBench.getState().undo());
    expect(useBench.getState().project.paper.margin).toBe(20);
  });

  it('has every kind of file at one place, with what it is for in a sentence', async () => {
    render(<Workbench />);
    await screen.findByRole('button', { name: /^Print the pattern/ });
    for (const { kind, name, what } of SINGLE_FILES) {
      expect(what.template, kind).toMatch(/^[A-Z].*\.$/);
      // The pattern is the button of the station, and what has changed asks for a print before.
      if (kind !== 'pdf' && kind !== 'changed') expect(screen.getAllByText(name.template), kind).toHaveLength(1);
    }
    expect(group('At a print shop').getAllByRole('button')).toHaveLength(1);
  });

  it('says under which name a file was saved and what to do with it first, beside its own button', async () => {
    render(<Workbench />);
    const button = await screen.findByRole('button', { name: /^Print the pattern/ });
    act(() => useTaking.setState({ saved: { kind: 'pdf', fileName: 'lounge.pdf' } }));
    expect(button.parentElement).toHaveTextContent(
      /Saved as “lounge\.pdf”\. Print its first page alone, at 100 %.*measure both squares/,
    );
    act(() => useTaking.setState({ saved: { kind: 'dxf', fileName: 'lounge.dxf' } }));
    expect(button.parentElement).not.toHaveTextContent('Saved as');
    expect(group('By a cutting machine').getByText('Saved as “lounge.dxf”.')).toBeVisible();
  });

  it('leads to the class, which has a place of its own in the bar, too', async () => {
    render(<Workbench />);
    await userEvent.click(await screen.findByRole('button', { name: /^The class/ }));
    await screen.findByRole('dialog', { name: 'A class from a table' });
    act(() => useBench.getState().goTo('sew'));
    expect(screen.getByRole('dialog', { name: 'A class from a table' })).toBeVisible();
    await userEvent.keyboard('{Escape}');
    await userEvent.click(screen.getByRole('button', { name: 'Class' }));
    await screen.findByRole('dialog', { name: 'A class from a table' });
  });
});

it('has the guide at Sew, too', async () => {
  act(() => useBench.getState().goTo('sew'));
  render(<Workbench />);
  expect(await screen.findByRole('button', { name: /^Sewing guide, PDF/ })).toBeEnabled();
});
