import { PDFArray, PDFDict, PDFDocument, PDFHexString, PDFName, PDFString } from 'pdf-lib';
import { SaxesParser } from 'saxes';
import { describe, expect, test } from 'vitest';
import { carriedOut, type FinishedFile, makeFiles } from '../../src/files';
import { DRAWING_LAYERS } from '../../src/files/content/layers';
import { said } from '../../src/words';
import { draftWith } from './drafts';
import { printFont } from './print-font';

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

/** The outermost groups of an SVG from the bottom up, each with its title, as an XML reader finds them. */
function svgLayers(text: string): readonly { readonly id: string; readonly title: string }[] {
  const found: { id: string; title: string }[] = [];
  const open: string[] = [];
  let group: { id: string; title: string } | undefined;
  const parser = new SaxesParser();
  parser.on('opentag', ({ name, attributes }) => {
    if (name === 'g' && open.length === 1) {
      group = { id: String(attributes.id), title: '' };
      found.push(group);
    }
    open.push(name);
  });
  parser.on('text', (words) => {
    if (group && open.length === 3 && open.at(-1) === 'title') group.title += words;
  });
  parser.on('closetag', () => open.pop());
  parser.write(text).close();
  return found;
}

const made = carriedOut(makeFiles(jobs, ['pdf', 'large', 'projector', 'svg', 'nested'], options));
const file = async (name: string) => {
  const found = (await made).find((one) => one.name === name);
  if (!found) throw new Error(`no ${name} in ${(await made).map((one) => one.name)}`);
  return found.content;
};
const drawing = DRAWING_LAYERS.map(({ name }) => said(name));

describe('the layers of a drawing', () => {
  test('are the same in the SVG, by the same names and in the same order', async () => {
    expect(svgLayers((await file('Ann.svg')) as string)).toEqual(
      DRAWING_LAYERS.map(({ id, name }) => ({ id, title: said(name) })),
    );
  });

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
    expect(svgLayers((await file('Ann-and-1-more.nested.svg')) as string)).toEqual([
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
