// @vitest-environment jsdom
import { describe, expect, test } from 'vitest';
import { LINE_STYLES, pieceDrawing } from '../../../src/drawing';
import { writeSvg } from '../../../src/files';
import { curveIsStraight, pathLength } from '../../../src/plane';
import { draftWith } from '../drafts';
import { curvesOf } from '../svg-curves';

const draft = draftWith();
const parse = (text: string) => new DOMParser().parseFromString(text, 'image/svg+xml');
const svg = parse(writeSvg(draft)).documentElement;
const [piece] = draft.pieces;
if (!piece) throw new Error('no piece');
const drawing = pieceDrawing(piece);

const layer = (id: string) => [...(svg.querySelector(`#${id}`)?.querySelectorAll('path') ?? [])];

describe('the drawing file', () => {
  test('has real size: millimetres outside, the same millimetres inside', () => {
    const [, , width, height] = (svg.getAttribute('viewBox') ?? '').split(' ');
    expect(svg.getAttribute('width')).toBe(`${width}mm`);
    expect(svg.getAttribute('height')).toBe(`${height}mm`);
    expect(Number(height)).toBeGreaterThan(900);
  });

  test('has the named groups', () => {
    expect(
      [...svg.children]
        .filter((child) => child.tagName === 'g')
        .map((group) => group.id)
        .sort(),
    ).toEqual(['cut', 'folds', 'grain', 'levels', 'notches', 'stitch', 'text']);
  });

  test('its cut line is one closed path and reads back to the same length within 0.05 mm', () => {
    const [cut, ...others] = layer('cut');
    expect(others).toEqual([]);
    expect(cut?.getAttribute('d')?.match(/M/g)).toHaveLength(1);
    expect(cut?.getAttribute('d')).toMatch(/Z$/);
    const own = drawing.paths.find((path) => path.stroke === 'cut')?.curves ?? [];
    expect(Math.abs(pathLength(curvesOf(cut?.getAttribute('d') ?? '')) - pathLength(own))).toBeLessThan(0.05);
  });

  test.each(['levels', 'folds', 'stitch', 'notches', 'grain'] as const)(
    'every path of %s reads back to its own length',
    (id) => {
      const paths = drawing.paths.filter((path) => path.layer === id);
      expect(paths.length).toBeGreaterThan(0);
      for (const [i, element] of layer(id).entries()) {
        expect(element.getAttribute('data-name')).toBe(paths[i]?.name);
        expect(pathLength(curvesOf(element.getAttribute('d') ?? ''))).toBeCloseTo(
          pathLength(paths[i]?.curves ?? []),
          1,
        );
      }
    },
  );

  test('straight lines are L and curves are C', () => {
    const all = drawing.paths.flatMap((path) => path.curves);
    const data = [...svg.querySelectorAll('path')].map((path) => path.getAttribute('d')).join('');
    expect(data.match(/L/g)).toHaveLength(all.filter(curveIsStraight).length);
    expect(data.match(/C/g)).toHaveLength(all.filter((curve) => !curveIsStraight(curve)).length);
  });

  test('carries the words, and the line types of the print', () => {
    const said = new Set([...svg.querySelectorAll('#text text')].map((text) => text.textContent));
    for (const { text } of drawing.texts) expect(said.has(text), text).toBe(true);
    for (const text of ['seam allowance included: 1.5 cm', 'cut here', 'front inseam – stitch (1.5 cm)', 'hip line'])
      expect(said.has(text), text).toBe(true);
    expect(layer('cut')[0]?.getAttribute('stroke-width')).toBe(`${LINE_STYLES.cut.width}`);
  });

  test('survives a name full of signs', () => {
    const name = '<b> & "quotes" \u0001 ½';
    const title = parse(writeSvg(draftWith({ name }))).querySelector('title');
    expect(title?.textContent).toBe('<b> & "quotes"   ½');
  });
});
