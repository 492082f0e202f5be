import DxfParser from 'dxf-parser';
import { PDFArray, PDFDict, PDFDocument, PDFHexString, PDFName, PDFString } from 'pdf-lib';
import { SaxesParser } from 'saxes';
import { describe, expect, test } from 'vitest';
import { carriedOut, type FinishedFile, makeFiles } from '../../src/files';
import { DRAWING_LAYERS } from '../../src/files/content/layers';
import { pathLength } from '../../src/plane';
import { said } from '../../src/words';
import { draftWith } from './drafts';
import { printFont } from './print-font';
import { parsedLines } from './read-dxf';
import { curvesOf } from './svg-curves';

const options = { font: printFont(), date: new Date('2026-11-24T12:00:00Z') };
const jobs = ['Ann', 'Bé'].map((label, i) => ({
  name: label,
  draft: draftWith({ body: { label, hipGirth: 1000 + 40 * i }, leg: { length: 'short' }, paper: { sheet: 'A3' } }),
}));

/** The names in the list of layers of a PDF, the uppermost first, as pdf-lib finds it; and those that are shown when it is opened. */
async function pdfLayers(content: FinishedFile['content']) {
  const document = await PDFDocument.load(content as Uint8Array);
  const properties = document.catalog.lookup(PDFName.of('OCProperties'), PDFDict);
  const settings = properties.lookup(PDFName.of('D'), PDFDict);
  const names = (dict: PDFDict, key: string) =>
    dict
      .lookup(PDFName.of(key), PDFArray)
      .asArray()
      .map((_, i) => {
        const group = dict.lookup(PDFName.of(key), PDFArray).lookup(i, PDFDict);
        expect(group.lookup(PDFName.of('Type'), PDFName).asString()).toBe('/OCG');
        return group.lookup(PDFName.of('Name'), PDFString, PDFHexString).decodeText();
      });
  return { all: names(properties, 'OCGs'), listed: names(settings, 'Order'), shown: names(settings, 'ON') };
}

/** The outermost groups of an SVG from the bottom up, each with its title and its lines' path data, as an XML reader finds them. */
function svgLayers(text: string): readonly { readonly id: string; readonly title: string; readonly lines: string[] }[] {
  const found: { id: string; title: string; lines: string[] }[] = [];
  const open: string[] = [];
  let group: (typeof found)[number] | undefined;
  const parser = new SaxesParser();
  parser.on('opentag', ({ name, attributes }) => {
    if (name === 'g' && open.length === 1) {
      group = { id: String(attributes.id), title: '', lines: [] };
      found.push(group);
    }
    if (name === 'path' && attributes.stroke !== undefined) group?.lines.push(String(attributes.d));
    open.push(name);
  });
  parser.on('text', (words) => {
    if (group && open.length === 3 && open.at(-1) === 'title') group.title += words;
  });
  parser.on('closetag', () => open.pop());
  parser.write(text).close();
  return found;
}

const svgNames = (text: string) => svgLayers(text).map(({ id, title }) => ({ id, title }));

/** The names in the table of layers of a DXF, and how much line lies on each, by dxf-parser. */
function dxfLayers(text: string) {
  const lines = parsedLines(text);
  const names = Object.keys(new DxfParser().parseSync(text)?.tables.layer.layers ?? {});
  // A layer that every DXF has, whatever is drawn in it.
  const own = names.filter((name) => name !== '0');
  const lengthOf = (name: string) =>
    lines.filter(({ layer }) => layer === name).reduce((sum, { length }) => sum + length, 0);
  return new Map(own.map((name) => [name, lengthOf(name)]));
}

/** How much line lies on a layer of an SVG, mm. */
const svgLength = (lines: readonly string[]) => lines.reduce((sum, data) => sum + pathLength(curvesOf(data)), 0);

const made = carriedOut(makeFiles(jobs, ['pdf', 'large', 'projector', 'svg', 'nested', 'dxf', 'r12'], options));
const file = async (name: string) => {
  const found = (await made).find((one) => one.name === name);
  if (!found) throw new Error(`no ${name} in ${(await made).map((one) => one.name)}`);
  return found.content;
};
const drawing = DRAWING_LAYERS.map(({ name }) => said(name));

describe('the layers of a drawing', () => {
  test('are the same in the SVG, by the same names and in the same order', async () => {
    expect(svgNames((await file('Ann.svg')) as string)).toEqual(
      DRAWING_LAYERS.map(({ id, name }) => ({ id, title: said(name) })),
    );
  });

  test.each(['.dxf', '.r12.dxf'])(
    'and in %s by the numbers of the standard, with the same lines on each',
    async (ending) => {
      const dxf = dxfLayers((await file(`Ann${ending}`)) as string);
      const wanted = new Map<string, number>();
      for (const { id, lines } of svgLayers((await file('Ann.svg')) as string)) {
        const number = DRAWING_LAYERS.find((layer) => layer.id === id)?.number ?? `none for ${id}`;
        wanted.set(number, (wanted.get(number) ?? 0) + svgLength(lines));
      }
      expect(new Set(dxf.keys())).toEqual(new Set(wanted.keys()));
      for (const [number, length] of wanted) expect(dxf.get(number), `layer ${number}`).toBeCloseTo(length, 0);
    },
  );

  test.each([
    ['.pdf', [], ['Joins and sheet labels']],
    ['.large.pdf', [], ['Notes and test squares']],
    ['.projector.pdf', ['Grid'], ['Notes and test squares']],
  ])('and in %s, with what belongs to paper or table under and over them, all shown', async (ending, under, over) => {
    const { all, listed, shown } = await pdfLayers(await file(`Ann${ending}`));
    expect([...listed].reverse()).toEqual([...under, ...drawing, ...over]);
    expect(all).toEqual(listed);
    expect(shown).toEqual(listed);
  });
});

describe('the layers of a nest', () => {
  const bodies = ['Common to all', '1: Ann', '2: Bé'];

  test('are one for each body in the SVG, by its name', async () => {
    expect(svgNames((await file('Ann-and-1-more.nested.svg')) as string)).toEqual([
      { id: 'common', title: 'Common to all' },
      { id: 'body-1', title: '1: Ann' },
      { id: 'body-2', title: '2: Bé' },
      { id: 'text', title: 'Words' },
      { id: 'key', title: 'Key' },
    ]);
  });

  test.each([
    ['.nested.pdf', ['Words', 'Joins and sheet labels']],
    ['.nested.large.pdf', ['Words', 'Key', 'Notes and test squares']],
  ])('and in %s, so that one can be printed without the others', async (ending, over) => {
    const { listed } = await pdfLayers(await file(`Ann-and-1-more${ending}`));
    expect([...listed].reverse()).toEqual([...bodies, ...over]);
  });
});
