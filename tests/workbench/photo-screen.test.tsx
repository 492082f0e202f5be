import '@testing-library/jest-dom/vitest';
import 'fake-indexeddb/auto';
import { act, cleanup, render, screen } from '@testing-library/react';
import { afterEach, describe, expect, it } from 'vitest';
import PhotoScreen from '../../src/workbench/photo/PhotoScreen';
import { changeWork, goTo, startAgain, usePhoto } from '../../src/workbench/photo/photo-store';
import { NO_WORK, withShot } from '../../src/workbench/photo/work';
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
    const { knee: _knee, ...others } = work.back.marks.landmarks;
    act(() => changeWork({ ...work, back: { shot: 0, marks: { ...work.back.marks, landmarks: others } } }));
    expect(list()).toHaveTextContent(/^Back, knee at the inseam: must be marked\.$/);
    expect(screen.getByRole('button', { name: /Use these blocks/ })).toBeDisabled();
    act(() => changeWork(work));
    expect(screen.getByRole('button', { name: /Use these blocks/ })).toBeEnabled();
    act(() => changeWork({ ...work, allowances: { ...work.allowances, inseam: 150, side: 150 } }));
    expect(screen.getByText(/more than can be taken off/)).toBeInTheDocument();
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
});
