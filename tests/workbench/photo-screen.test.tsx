import '@testing-library/jest-dom/vitest';
import 'fake-indexeddb/auto';
import { act, cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it } from 'vitest';
import { isWork } from '../../src/workbench/photo/is-work';
import { moveMark } from '../../src/workbench/photo/move-mark';
import PhotoScreen from '../../src/workbench/photo/PhotoScreen';
import { changeWork, goTo, showShot, startAgain, usePhoto } from '../../src/workbench/photo/photo-store';
import { NO_WORK, withMark, withShot } from '../../src/workbench/photo/work';
import { markedWork, pictures, shot } from './photo-steps';

afterEach(() => {
  cleanup();
  act(startAgain);
});

// The document here draws nothing: what is seen of a picture is looked at in a browser.
HTMLCanvasElement.prototype.getContext = () => null;

const work = markedWork();

describe('the screen for blocks from a photograph', () => {
  it('says what is missing, and offers the blocks only when nothing is', () => {
    render(<PhotoScreen />);
    act(() => {
      changeWork({ ...work, back: NO_WORK.back });
      usePhoto.setState({ pictures });
      goTo('use');
    });
    const list = () => screen.getByRole('list', { name: 'What is missing' });
    expect(list()).toHaveTextContent(/^Back: 11 places are still to be marked\.$/);
    const { hipSide: _hip, ...others } = work.back.marks.landmarks;
    act(() => changeWork({ ...work, back: { shot: 0, marks: { ...work.back.marks, landmarks: others } } }));
    expect(list()).toHaveTextContent(/^Back, hip at the side: must be marked\.$/);
    expect(screen.getByRole('button', { name: /Use these blocks/ })).toBeDisabled();
    act(() => changeWork(work));
    expect(screen.getByRole('button', { name: /Use these blocks/ })).toBeEnabled();
  });

  it('says how far off the paper may be, and that corners that cross over are none', () => {
    render(<PhotoScreen />);
    act(() => {
      changeWork(work);
      usePhoto.setState({ pictures });
      goTo('corners');
    });
    expect(screen.getByText(/Over most of the picture ± (less than )?\d/)).toBeInTheDocument();
    const ends = [shot.corners[0], shot.corners[1]] as const;
    act(() => changeWork(withShot(work, 0, { check: { ends, length: 900 } })));
    expect(screen.getByText(/The fifth length comes out as 100 cm/)).toHaveAttribute('data-verdict', 'wrong');
    const [a, b, c, d] = shot.corners;
    act(() => changeWork(withShot(work, 0, { corners: [a, c, b, d] })));
    expect(screen.getByText(/The four corners cross over/)).toBeInTheDocument();
    expect(screen.getByRole('button', { name: /Mark the front/ })).toBeDisabled();
  });

  it('needs no mark on a scan, whose dots say how large it is', async () => {
    render(<PhotoScreen />);
    act(() => {
      changeWork(withShot(work, 0, { corners: [shot.corners[0], shot.corners[2], shot.corners[1], shot.corners[3]] }));
      usePhoto.setState({ pictures });
      goTo('corners');
    });
    const next = screen.getByRole('button', { name: /Mark the front/ });
    expect(next).toBeDisabled();
    await userEvent.click(screen.getByRole('radio', { name: 'none, it is a scan' }));
    expect(next).toBeEnabled();
    const dots = screen.getByLabelText('How finely it was scanned');
    expect(dots).toHaveValue('300');
    const wide = () => usePhoto.getState().work.shots[0]?.dots;
    await userEvent.clear(dots);
    await userEvent.type(dots, '30');
    expect(screen.getByText(/^It must be 50 to 2400 dots an inch\.$/)).toBeInTheDocument();
    await userEvent.type(dots, '0');
    await userEvent.tab();
    expect(wide()).toBe(300);
    expect(isWork(usePhoto.getState().work)).toBe(true);
  });

  it('marks a block on two photographs that show the same places', () => {
    render(<PhotoScreen />);
    act(() => {
      changeWork({ ...work, shots: [shot, { ...shot, name: 'b.png', rectangle: 'none' }] });
      usePhoto.setState({ pictures: [pictures[0], pictures[0]] });
      goTo('corners');
    });
    act(() => showShot(1));
    expect(screen.getByText(/Nothing holds this photograph yet/)).toBeInTheDocument();
    for (let i = 0; i < 4; i += 1) act(() => screen.getByRole('button', { name: /^Add a place/ }).click());
    const places = [
      { x: 100, y: 100 },
      { x: 900, y: 120 },
      { x: 850, y: 1000 },
      { x: 120, y: 950 },
    ];
    // The second picture is taken from 50 pixels farther to the right.
    for (const [i, at] of places.entries())
      for (const [index, by] of [0, 50].entries()) {
        const moved = { x: at.x - by, y: at.y };
        act(() => changeWork(withMark(usePhoto.getState().work, index, { kind: 'join', index: i + 1 }, moved)));
      }
    expect(screen.queryByText(/Nothing holds this photograph yet/)).toBeNull();
    act(() => goTo('front'));
    act(() => showShot(1));
    const { knee } = work.front.marks.landmarks;
    const id = { kind: 'landmark', part: 'front', name: 'knee' } as const;
    act(() => moveMark(id, knee ?? { x: 0, y: 0 }, 'here'));
    const set = usePhoto.getState().work.front.marks.landmarks.knee;
    expect(set?.shot).toBe(1);
    expect(set?.x).toBeCloseTo((knee?.x ?? 0) - 50, 6);
    expect(usePhoto.getState().work.front.marks.landmarks.hemSide?.shot).toBe(0);
    act(() => goTo('use'));
    expect(screen.getByRole('button', { name: /Use these blocks/ })).toBeEnabled();
  });

  it('marks a block without a knee, which has one place less', async () => {
    render(<PhotoScreen />);
    const { knee: _knee, ...others } = work.front.marks.landmarks;
    act(() => {
      changeWork({ ...work, front: { shot: 0, marks: { ...work.front.marks, landmarks: others } } });
      usePhoto.setState({ pictures });
      goTo('front');
    });
    expect(screen.getByRole('button', { name: /Mark the back/ })).toBeDisabled();
    await userEvent.click(screen.getByRole('button', { name: 'This block has no knee line' }));
    expect(screen.getByRole('button', { name: /Mark the back/ })).toBeEnabled();
    await userEvent.click(screen.getByRole('button', { name: 'This block has a knee line after all' }));
    expect(screen.getByText('Knee at the inseam')).toBeInTheDocument();
  });
});
