import { describe, expect, test } from 'vitest';
import { readBlocks } from '../../../src/files/read/blocks';
import { writeBlocksSvg } from '../../../src/files/svg/blocks';
import { distance, edgeLength, outlineEdge } from '../../../src/plane';
import { checksOf, type Draft, draft, exampleProject, type Project } from '../../../src/project';
import { BLOCK_EDGES } from '../../../src/trace';
import { printProblem } from '../../../src/words';

function draftOf(project: Project): Draft {
  const result = draft(project);
  if (!result.ok) throw new Error('refused');
  return result.value;
}

const own = draftOf(exampleProject);

async function brought(text: string): Promise<Draft> {
  const result = await readBlocks(text);
  if (!result.ok) throw new Error(result.problems.map((one) => printProblem(one, 'cm')).join('\n'));
  return draftOf({ ...exampleProject, block: { source: 'drawn', ...result.value } });
}

const refusedWith = async (text: string): Promise<readonly string[]> => {
  const result = await readBlocks(text);
  return result.ok ? [] : result.problems.map((one) => printProblem(one, 'cm'));
};

/** Every edge as long as the block's own, and its ends as far apart. */
function expectSameBlocks(other: Draft, within: number): void {
  for (const part of ['front', 'back'] as const) {
    const [here, there] = [own.blocks[part], other.blocks[part]];
    for (const name of BLOCK_EDGES) {
      const [a, b] = [outlineEdge(here.edges, name), outlineEdge(there.edges, name)];
      expect(Math.abs(edgeLength(a) - edgeLength(b)), `${part} ${name}`).toBeLessThan(within);
    }
    const side = outlineEdge(here.edges, 'waist').curves[0]?.[0] ?? { x: 0, y: 0 };
    outlineEdge(here.edges, 'inseam').curves.forEach(([p], i) => {
      const q = outlineEdge(there.edges, 'inseam').curves[i]?.[0] ?? { x: 0, y: 0 };
      expect(distance({ x: p.x - side.x, y: p.y - side.y }, q), part).toBeLessThan(within);
    });
    expect(there.hipLevel).toBeCloseTo(here.hipLevel - side.y, 2);
    expect(there.kneeLevel).toBeCloseTo(here.kneeLevel - side.y, 2);
  }
}

const SVG = writeBlocksSvg(own);

describe('blocks in a drawing', () => {
  test('that Legwork wrote come back as they were, within a hundredth of a millimetre', async () => {
    expectSameBlocks(await brought(SVG), 0.01);
  });

  test('are read at true size whatever their unit, scaled, moved and in nested groups', async () => {
    const [, left, top, wide, high] = /viewBox="([-\d.]+) ([-\d.]+) ([\d.]+) ([\d.]+)"/.exec(SVG)?.map(Number) ?? [];
    const inInches = SVG.replace(
      /width="[^"]*" height="[^"]*" viewBox="[^"]*"/,
      `width="${(wide ?? 0) / 25.4}in" height="${(high ?? 0) / 25.4}in" viewBox="0 0 ${2 * (wide ?? 0)} ${2 * (high ?? 0)}"`,
    )
      .replace('<g id="back"', `<g transform="scale(2) translate(${-(left ?? 0)}, ${-(top ?? 0)})"><g id="back"`)
      .replace('</svg>', '</g></svg>');
    expectSameBlocks(await brought(inInches), 0.01);
  });

  test('may lie mirrored, and turned by a half and back', async () => {
    const mirrored = SVG.replace('<g id="front"', '<g id="front" transform="matrix(-1 0 0 1 40 7)"').replace(
      '<g id="back"',
      '<g id="back" transform="rotate(180) translate(3 5) rotate(180 0 0)"',
    );
    expectSameBlocks(await brought(mirrored), 0.01);
  });

  test('may have their edges in pieces and in any direction, named by their groups', async () => {
    const { front } = own.blocks;
    const [first] = outlineEdge(front.edges, 'inseam').curves;
    const text = SVG.replace(/<path id="front-inseam"([^>]*) d="([^"]*)"\/>/, (_, look: string, d: string) => {
      const [start = '', ...curves] = d.split('C');
      // Two pieces; the second is drawn first, and backwards.
      const [one = '', two = ''] = curves;
      const [a, b, c] = two
        .trim()
        .split(' ')
        .reduce<string[]>((pairs, figure, i) => {
          if (i % 2 === 0) pairs.push(figure);
          else pairs[pairs.length - 1] += ` ${figure}`;
          return pairs;
        }, []);
      const meet = one.trim().split(' ').slice(-2).join(' ');
      return `<g id="inseam"><path${look} d="M${c}C${b} ${a} ${meet}"/><path${look} d="${start}C${one}"/></g>`;
    });
    expect(first).toBeDefined();
    expect(text).not.toBe(SVG);
    expectSameBlocks(await brought(text), 0.01);
  });

  test('with front and back switched are told, those that are right are not', async () => {
    const other = (_: string, part: string) => `id="${part === 'front' ? 'back' : 'front'}`;
    const switched = await brought(SVG.replace(/id="(front|back)/g, other));
    const verdict = (d: Draft) => checksOf(d).find(({ id }) => id === 'traced-parts')?.verdict;
    expect([verdict(await brought(SVG)), verdict(switched)]).toEqual(['good', 'wrong']);
  });

  test('draw the same leg as the blocks they were written from', async () => {
    const leg = (d: Draft) => d.measures.hipGirthFinished;
    expect(Math.abs(leg(await brought(SVG)) - leg(own))).toBeLessThan(0.5);
  });
});

describe('a drawing that holds no blocks', () => {
  const svg = (attributes: string, inner = '') =>
    `<svg xmlns="http://www.w3.org/2000/svg" ${attributes}>${inner}</svg>`;
  const MM = 'width="800mm" viewBox="0 0 800 1200"';

  test.each([
    ['no XML', 'front and back', /is no SVG drawing that can be read/],
    ['another kind of XML', '<html xmlns="http://www.w3.org/1999/xhtml"/>', /is no SVG drawing/],
    ['an open tag', `<svg xmlns="http://www.w3.org/2000/svg" ${MM}><g>`, /is no SVG drawing that can be read/],
    ['no true size', svg('viewBox="0 0 800 1200"'), /has no true size: .* must be given in mm, cm, in, pt or pc/],
    ['a size in pixels', svg('width="800" viewBox="0 0 800 1200"'), /has no true size/],
    ['a bad viewBox', svg('width="800mm" viewBox="0 0 800"'), /is no viewBox/],
    ['nothing named', svg(MM, '<path d="M0 0L100 100"/>'), /has no line of a block by its name/],
    ['bad path data', svg(MM, '<path id="front-hem" d="M0 0 L red"/>'), /“front-hem” and can’t be read as a path/],
    ['a bad transform', svg(MM, '<g transform="turn(3)"/>'), /can’t be read as a transform/],
  ])('is refused in one sentence: %s', async (_, text, sentence) => {
    const lines = await refusedWith(text);
    expect(lines).toHaveLength(1);
    expect(lines[0]).toMatch(sentence);
  });

  test('says each line that is missing, and no other', async () => {
    const text = SVG.replace(/<path id="back-crotch"[^>]*\/>/, '').replace(/<path id="front-hip"[^>]*\/>/, '');
    expect(await refusedWith(text)).toEqual([
      'front-hip: missing: must be drawn, as a line of that name.',
      'back-crotch: missing: must be drawn, as a line of that name.',
    ]);
  });

  test('says which edge lies in pieces that do not meet, and which does not meet its neighbour', async () => {
    const pieces = SVG.replace('</g>', '<path id="back-hem-2" d="M0 0L10 0"/></g>');
    expect(await refusedWith(pieces)).toEqual([
      'back-hem: 2: must be one line; its 2 pieces don’t meet within 0.1 cm.',
    ]);
    const apart = SVG.replace('<path id="front-side"', '<path transform="translate(-6 0)" id="front-side"');
    const lines = await refusedWith(apart);
    expect(lines.length).toBeGreaterThan(0);
    expect(lines.join()).toMatch(/edges\.side: .*must start where hem ends; they are 0?\.?6 c?mm? apart/);
  });

  test('a line that is hidden or only defined is not there', async () => {
    for (const hidden of ['display="none"', 'style="visibility:hidden"'])
      expect(await refusedWith(SVG.replace('<path id="front-hem"', `<path ${hidden} id="front-hem"`))).toEqual([
        'front-hem: missing: must be drawn, as a line of that name.',
      ]);
    const defined = SVG.replace(/(<path id="front-hem"[^>]*\/>)/, '<defs>$1</defs>');
    expect(await refusedWith(defined)).toHaveLength(1);
  });
});
