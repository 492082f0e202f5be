import '@testing-library/jest-dom/vitest';
import { act, cleanup, render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { STARTING_BODIES } from '../../src/body';
import { exampleProject } from '../../src/project';
import { isStale } from '../../src/workbench/store/asked';
import { useBench } from '../../src/workbench/store/bench';
import { Workbench } from '../../src/workbench/Workbench';

const fresh = useBench.getInitialState();
const bench = () => useBench.getState();
const box = (name: string) => screen.getByRole('textbox', { name });

beforeEach(async () => {
  useBench.setState({ ...fresh, station: 'body' }, true);
  render(<Workbench />);
  // The station comes late, the first time.
  await screen.findByRole('textbox', { name: 'Waist' }, { timeout: 20_000 });
});
afterEach(cleanup);

describe('the station Body', () => {
  it('says beside the field what is worth a second look, and goes on drawing', async () => {
    await userEvent.clear(box('Waist'));
    await userEvent.type(box('Waist'), '140');
    const doubt = document.getElementById('field-body-waistGirth-doubt');
    expect(doubt).toHaveTextContent(/Doubtful Waist 140 cm beside hip 102 cm/);
    expect(box('Waist')).toHaveAccessibleDescription(/on measured people it is /);
    expect(box('Waist')).not.toHaveAttribute('aria-invalid');
    expect(bench().problems).toEqual([]);
    expect(bench().draft.body.waistGirth).toBe(1400);
    await userEvent.clear(box('Waist'));
    await userEvent.type(box('Waist'), '80');
    expect(document.getElementById('field-body-waistGirth-doubt')).toBeNull();
  });

  it('says it also at the other measurement while that is being typed', async () => {
    await userEvent.clear(box('Hip'));
    await userEvent.type(box('Hip'), '42');
    expect(document.getElementById('field-body-hipGirth-doubt')).toHaveTextContent(/Doubtful/);
    await userEvent.click(box('Inside leg'));
    expect(document.getElementById('field-body-hipGirth-doubt')).toBeNull();
  });

  it('asks first whether it is slept in, and warns of fire unless the answer is no', async () => {
    act(() => bench().startFresh());
    const asked = within(screen.getByRole('group', { name: 'Worn for sleeping' }));
    expect(document.querySelector('.stop-inside input')).toBe(asked.getByRole('radio', { name: 'no' }));
    expect(asked.queryByRole('radio', { checked: true })).toBeNull();
    expect(screen.getByText(/catches fire easily/)).toBeInTheDocument();
    await userEvent.click(asked.getByRole('radio', { name: 'no' }));
    expect(screen.queryByText(/catches fire easily/)).toBeNull();
    await userEvent.click(asked.getByRole('radio', { name: 'yes' }));
    expect(screen.getByText(/catches fire easily/)).toBeInTheDocument();
  });

  it('holds nothing against a number that nobody has given yet, and checks nothing before', async () => {
    act(() => bench().startFresh());
    expect(document.querySelector('.verdict, .stop-result:not(:empty)')).toBeNull();
    expect(document.querySelector('.drawing')?.textContent).not.toMatch(/\d/);
    await userEvent.type(box('Waist'), '140');
    await userEvent.type(box('Body rise'), '45');
    expect(document.querySelectorAll('.field-doubt')).toHaveLength(0);
    expect(box('Hip')).not.toHaveAttribute('aria-invalid');
    expect(screen.getByText('Still to be measured: hip, inside leg.')).toBeInTheDocument();
    await userEvent.type(box('Hip'), '100');
    expect(document.getElementById('field-body-waistGirth-doubt')).toHaveTextContent(/Waist 140 cm beside hip 100 cm/);
  });

  it('starts from a body like mine as one step to undo, and says whose it is', async () => {
    await userEvent.click(screen.getByText(/Start from a body like mine/));
    await userEvent.click(screen.getByRole('radio', { name: 'man' }));
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Hip about' }), '1100');
    const start = STARTING_BODIES.man.find(({ by }) => by === 1100);
    expect(screen.getByText(/Middle values of \d+ men/)).toHaveTextContent(`${start?.people} men`);
    await userEvent.click(screen.getByRole('button', { name: /Fill the fields/ }));
    expect(bench().project.body).toEqual({ label: exampleProject.body.label, ...start?.figures });
    expect(bench().project.body.crotchLength).toBeUndefined();
    expect(box('Hip')).toHaveValue('110');
    expect(bench().history.past.map((moment) => moment.label)).toEqual(['Starting body']);
    bench().undo();
    expect(bench().project.body).toEqual(exampleProject.body);
  });

  it('starts a child by its age, whose knee nobody measured', async () => {
    await userEvent.click(screen.getByText(/Start from a body like mine/));
    await userEvent.click(screen.getByRole('radio', { name: 'child' }));
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'How old' }), '4');
    await userEvent.click(screen.getByRole('button', { name: /Fill the fields/ }));
    expect(bench().draft.body.child).toBe(true);
    expect(box('Knee')).toHaveAccessibleDescription(/Nobody measured it on children/);
    expect(box('Thigh')).not.toHaveAccessibleDescription(/Nobody measured/);
    await userEvent.click(screen.getByRole('radio', { name: 'with a nappy' }));
    expect(bench().draft.body.nappy).toBe(true);
  });

  it('clears what was still to be measured when a starting body is taken', async () => {
    bench().startFresh();
    await userEvent.click(screen.getByText(/Start from a body like mine/));
    await userEvent.click(screen.getByRole('button', { name: /Fill the fields/ }));
    expect(screen.queryByText('Still to be measured.')).toBeNull();
    expect(box('Waist')).not.toHaveValue('');
  });

  it('estimates the rise by one press where nobody knows it, beside the range and never over a typed number', async () => {
    act(() => bench().startFresh());
    expect(screen.getByText('Once waist and hip are in, body rise can be estimated.')).toBeInTheDocument();
    await userEvent.type(box('Waist'), '38 in');
    await userEvent.type(box('Hip'), '41 in');
    await userEvent.type(box('Trouser inseam'), '30 in');
    await userEvent.click(screen.getByRole('button', { name: /^Estimate body rise: about 20/ }));
    expect(bench().project.body.bodyRise).toBe('estimated');
    expect(isStale(bench())).toBe(false);
    expect(box('Body rise')).toHaveValue('');
    expect(box('Body rise')).toHaveAttribute('placeholder', expect.stringMatching(/^est\. 20/));
    expect(box('Body rise')).toHaveAccessibleDescription(
      /Estimated from waist, hip and trouser inseam, and follows when that changes: nine in ten bodies like this one have 16\.\d cm to 23\.\d cm/,
    );
    const before = bench().draft.body.bodyRise;
    await userEvent.clear(box('Hip'));
    await userEvent.type(box('Hip'), '50 in');
    expect(bench().draft.body.bodyRise).toBeGreaterThan(before);
    await userEvent.type(box('Body rise'), '27');
    expect(bench().project.body.bodyRise).toBe(270);
    expect(bench().draft.body.estimates.map(({ key }) => key)).not.toContain('bodyRise');
    act(() => bench().undo());
    expect(bench().project.body.bodyRise).toBe('estimated');
  });

  it('estimates rise and inside leg together where only waist and hip are known', async () => {
    act(() => bench().startFresh());
    await userEvent.type(box('Waist'), '96');
    await userEvent.type(box('Hip'), '104');
    await userEvent.click(screen.getByRole('button', { name: 'Estimate body rise and inside leg' }));
    expect(bench().project.body).toMatchObject({ bodyRise: 'estimated', insideLeg: 'estimated' });
    expect(isStale(bench())).toBe(false);
  });

  it('shows how to measure on a press, and goes from there to how it is drawn and back', async () => {
    const how = screen.getByRole('button', { name: 'Body rise: how?' });
    await userEvent.click(how);
    expect(how).toHaveAttribute('aria-expanded', 'true');
    const card = document.getElementById(how.getAttribute('aria-controls') ?? '');
    expect(card).toHaveTextContent(/Sit on a hard, flat chair.*Another way Trousers that fit/);
    expect(card?.querySelectorAll('svg .tape-lit')).toHaveLength(2);
    await userEvent.click(await screen.findByRole('button', { name: 'Body rise: how it’s drawn' }));
    expect(bench().station).toBe('blocks');
    await userEvent.click(await screen.findByRole('button', { name: 'Back to body rise' }));
    expect(bench()).toMatchObject({ station: 'body', workingShown: false });
    await waitFor(() => expect(box('Body rise')).toHaveFocus());
  });

  it('draws the tape of the measurement that is typed', async () => {
    await userEvent.click(box('Hip'));
    expect(document.querySelectorAll('[data-view="back"] .tape-lit').length).toBeGreaterThan(0);
    await userEvent.click(box('Body rise'));
    expect(document.querySelectorAll('[data-view="seated"] .tape-lit').length).toBe(1);
    expect(document.querySelector('[data-view="back"]')).toBeNull();
  });

  it('writes no number at a tape that is estimated from what nobody has measured yet', async () => {
    act(() => bench().startFresh());
    await userEvent.type(box('Waist'), '96.5');
    await userEvent.type(box('Hip'), '104');
    await userEvent.click(screen.getByRole('button', { name: /^Estimate body rise: / }));
    const written = () =>
      [...document.querySelectorAll('.word-number')]
        .map((word) => word.textContent)
        .filter((text) => /rise/.test(text));
    expect(written()).toEqual(['Body rise']);
    await userEvent.type(box('Inside leg'), '78');
    await userEvent.click(box('Body rise'));
    expect(written()).toEqual([expect.stringMatching(/^Body rise [12]\d(\.\d)? cm$/)]);
  });
});
