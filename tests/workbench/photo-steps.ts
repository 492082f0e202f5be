import { act } from '@testing-library/react';
import { marksMapped } from '../../src/trace';
import { changeWork, goTo, STEPS, usePhoto } from '../../src/workbench/photo/photo-store';
import { pictureOf } from '../../src/workbench/photo/picture';
import { NO_WORK, newShot, type PhotoWork, withShot } from '../../src/workbench/photo/work';
import { useBench } from '../../src/workbench/store/bench';
import { markedBlock } from '../trace/marks/marked-block';

export const shot = {
  ...newShot('a.png', 1200, 1200),
  corners: [
    { x: 0, y: 0 },
    { x: 1000, y: 0 },
    { x: 1000, y: 1100 },
    { x: 0, y: 1100 },
  ] as const,
  across: 1000,
  along: 1100,
};
export const pictures = [pictureOf(1200, 1200, { width: 2, height: 2, data: new Uint8ClampedArray(16) })];

/** A photograph with both blocks of the example marked whole. */
export function markedWork(): PhotoWork {
  const { blocks } = useBench.getState().draft;
  const onPicture = (part: 'front' | 'back') => ({
    shot: 0,
    marks: marksMapped(markedBlock(blocks[part]), (p) => ({ x: p.x + 500, y: p.y + 60 })),
  });
  return { ...NO_WORK, shots: [shot], front: onPicture('front'), back: onPicture('back') };
}

/** Goes through every step of the shown screen, and what is selected there; `look` is called at each. */
export function throughPhotoSteps(look: () => void): void {
  const work = markedWork();
  const then = (change: () => void) => {
    act(change);
    look();
  };
  look();
  act(() => {
    changeWork(work);
    usePhoto.setState({ pictures });
  });
  for (const step of STEPS) then(() => goTo(step));
  then(() => {
    goTo('front');
    usePhoto.setState({ selected: { kind: 'point', part: 'front', edge: 'crotch', index: 0 } });
  });
  then(() => usePhoto.setState({ selected: { kind: 'landmark', part: 'front', name: 'knee' } }));
  then(() => changeWork({ ...work, front: NO_WORK.front }));
  act(() => goTo('corners'));
  for (const rectangle of ['own', 'sheet'] as const) {
    const ends = [shot.corners[0], shot.corners[1]] as const;
    act(() => changeWork(withShot(work, 0, { rectangle, check: { ends, length: 500 } })));
    then(() => usePhoto.setState({ selected: { kind: 'check', index: 0 } }));
  }
}
