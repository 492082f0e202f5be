import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { type Point, point } from '../../src/plane';
import { BLOCK_EDGES, LANDMARKS, viewToPlane } from '../../src/trace';
import { flatsOfWork } from '../../src/workbench/photo/flat';
import { shownFloor } from '../../src/workbench/photo/shown-place';
import { NO_WORK, newShot, type Part, type PhotoWork, withMark } from '../../src/workbench/photo/work';
import { fitView, inWindow } from '../../src/workbench/view/view';
import { marksOnFloor, marksSeen, SIZE, sheetCamera } from './photographed';

/** What is left free round a photograph that is fitted to its window. */
export const ROOM = { left: 16, top: 16, right: 16, bottom: 56 };

/** The photograph with sheets as it is marked step by step, by which the test knows what the page shows. */
export const sheetWork: PhotoWork = { ...NO_WORK, shots: [newShot('', SIZE.width, SIZE.height, marksSeen)] };

/** Marks the eleven places of a block, each where it is shown. */
export async function markBlock(page: Page, part: Part, press: (at: Point) => Promise<void>): Promise<void> {
  const window = await page.locator('.photo-picture').boundingBox();
  const [flat] = flatsOfWork(sheetWork);
  if (!window || !flat) throw new Error('nothing is shown');
  const { landmarks } = marksOnFloor(part);
  let work = sheetWork;
  for (const [i, name] of LANDMARKS.entries()) {
    await page.getByText(`${i + 1} of 11`).waitFor();
    const pixel = sheetCamera(landmarks[name] as Point);
    const shown = shownFloor({ work, selected: undefined, byKeys: false }, part, flat);
    const view = fitView(shown.box(), window, ROOM);
    const { x, y } = inWindow(viewToPlane(flat.view, pixel) as Point, view);
    // It is shown without having to be looked for.
    expect(x > 0 && y > 0 && x < window.width && y < window.height, `${part} ${name}`).toBe(true);
    await press(point(window.x + x, window.y + y));
    work = withMark(work, 0, { kind: 'landmark', part, name }, pixel);
  }
  await expect
    .poll(() => page.getByText('as drawn', { exact: true }).count(), { timeout: 15_000 })
    .toBe(BLOCK_EDGES.length);
}
