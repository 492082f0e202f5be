import { expect, test } from 'vitest';
import { cutCurves, type Piece } from '../../src/edges';
import { writeSvg } from '../../src/files';
import { outlineArea, pathLength } from '../../src/plane';
import { withFewestSheets } from '../../src/project';
import { benchProjects } from '../bench/bodies';
import { draftOf } from '../files/drafts';
import { printFont } from '../files/print-font';
import { parsedLines } from '../files/read-dxf';
import { writeDxf, writePdf } from '../files/written';
import { engineReading } from './crossings-engine';
import { every, share } from './every';
import { distribution } from './survey';

const LENGTH_TRUE = 0.05;
const AREA_TRUE = 1e-4;
const LARGEST_PDF = 150_000;
const FINISHES = ['elasticCasing', 'separateCasing', 'knitBand', 'facedCasing'] as const;

const svgCuts = (text: string) => {
  const [, group = ''] = /<g id="cut"[^>]*>([\s\S]*?)<\/g>/.exec(text) ?? [];
  return [...group.matchAll(/ d="([^"]+)"/g)].map(([, data = '']) => engineReading(data));
};

const dxfCuts = (text: string) => parsedLines(text).filter(({ layer }) => layer === '1');

test('every cut line comes back from DXF, old DXF and SVG as long and as large as it was; the PDF stays small', async () => {
  const lengths: number[] = [];
  const areas: number[] = [];
  const sizes: number[] = [];
  for (const [i, project] of share(benchProjects(200), 3).entries()) {
    const finish = FINISHES[i % FINISHES.length] ?? 'elasticCasing';
    const draft = draftOf({ ...project, waist: { ...project.waist, finish } });
    const read = [dxfCuts(await writeDxf(draft)), dxfCuts(await writeDxf(draft, 'R12')), svgCuts(writeSvg(draft))];
    for (const cuts of read) {
      expect(cuts).toHaveLength(draft.pieces.length);
      for (const [k, { length, area, closed }] of cuts.entries()) {
        const curves = cutCurves(draft.pieces[k] as Piece);
        expect(closed).toBe(true);
        lengths.push(Math.abs(length - pathLength(curves)));
        areas.push(Math.abs(area / Math.abs(outlineArea(curves)) - 1));
      }
    }
    sizes.push((await writePdf(withFewestSheets(draft), { font: printFont(), date: new Date(0) })).length);
  }
  if (every) {
    console.log(distribution('length off, mm', lengths, 4));
    console.log(distribution('area off, share', areas, 7));
    console.log(distribution('PDF, bytes', sizes, 0));
  }
  expect(Math.max(...lengths)).toBeLessThan(LENGTH_TRUE);
  expect(Math.max(...areas)).toBeLessThan(AREA_TRUE);
  expect(Math.max(...sizes)).toBeLessThan(LARGEST_PDF);
}, 1_200_000);
