import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { draft, garmentOf, openProject } from '../../src/project';
import { sewingSteps, stepPicture } from '../../src/sewing';

// Drawn at random: a waist that rises steeply to the back, and a hem that ends above the level of its inseam.
it.each(['waist', 'cord'])('draws no line to nowhere on an odd garment: %s', (name) => {
  const file = new URL(`../fuzz/corpus/picture-not-finite-${name}.json`, import.meta.url);
  const opened = openProject(readFileSync(file, 'utf8'));
  const result = opened.ok ? draft(opened.value) : opened;
  if (!result.ok) throw new Error('refused');
  const garment = garmentOf(result.value);
  const nowhere: string[] = [];
  for (const { id, scene } of sewingSteps(garment))
    JSON.stringify(stepPicture(garment, scene), (key, value) => {
      if (typeof value === 'number' && !Number.isFinite(value)) nowhere.push(`${id} ${key}`);
      return value;
    });
  expect(nowhere).toEqual([]);
});
