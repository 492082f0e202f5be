import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { draft, garmentOf, openProject } from '../../src/project';
import { sewingSteps, stepPicture } from '../../src/sewing';

/** Letters smaller than a picture's width by this nobody reads. */
const MOST_LETTERS_ABREAST = 100;

// A waist that rises steeply to the back, a hem that ends above the level of its inseam, one whose corners are a hair apart.
it.each(['not-finite-waist', 'not-finite-cord', 'of-no-width-hem'])(
  'draws no line to nowhere and no word too small on an odd garment: %s',
  (name) => {
    const file = new URL(`../fuzz/corpus/picture-${name}.json`, import.meta.url);
    const opened = openProject(readFileSync(file, 'utf8'));
    const result = opened.ok ? draft(opened.value) : opened;
    if (!result.ok) throw new Error('refused');
    const garment = garmentOf(result.value);
    const faults: string[] = [];
    for (const { id, scene } of sewingSteps(garment)) {
      const picture = stepPicture(garment, scene);
      const smallest = (picture.box.right - picture.box.left) / MOST_LETTERS_ABREAST;
      for (const item of picture.panels.flatMap((panel) => panel.items))
        if (item.kind === 'word' && !(item.size > smallest)) faults.push(`${id} a word of ${item.size} mm`);
      JSON.stringify(picture, (key, value) => {
        if (typeof value === 'number' && !Number.isFinite(value)) faults.push(`${id} ${key}`);
        return value;
      });
    }
    expect(faults).toEqual([]);
  },
);
