import type { Block } from '../../block';
import { LINE_STYLES, type Stroke } from '../../drawing';
import { boxGrown, type Curve, curveMap, curvesBounds, outlineCurves, point, straight } from '../../plane';
import type { Draft } from '../../project';
import { own, words } from '../../words';
import { SVG_LINES, SVG_WORDS, svgFile, svgGroup, svgNamedPath, svgText } from './parts';

/** Between the two blocks, and white round them. */
const GAP = 40;
const BORDER = 20;
/** Height of the capitals of a block's name. */
const LETTERS = 10;

/**
 * The fitted front and back block as SVG 1.1 in true size, each edge a line by its name, so that they can be printed,
 * corrected in a drawing program, and brought back: {@link readBlocks} reads what this writes.
 *
 * @param draft of which the blocks are drawn, net, with their darts
 */
export function writeBlocksSvg({ blocks, project }: Draft): string {
  const shift = GAP / 2;
  const placed = [
    { block: blocks.back, dx: -shift },
    { block: blocks.front, dx: shift },
  ];
  const all = placed.flatMap(({ block, dx }) => outlineCurves(block.edges).map((curve) => movedBy(curve, dx)));
  const frame = {
    title: words`${own(project.name)}: blocks`,
    about: words`Fitted blocks for ${own(project.body.label)}, net. One unit is one millimetre.`,
    box: boxGrown(curvesBounds(all), BORDER),
  };
  return svgFile(
    frame,
    placed.map(({ block, dx }) => blockGroup(block, dx)),
  );
}

function blockGroup(block: Block, dx: number): string {
  const { part, edges, grainline, hipLevel, kneeLevel, darts } = block;
  const line = (name: string, stroke: Exclude<Stroke, 'solid'>, curves: readonly Curve[]) =>
    svgNamedPath(
      `${part}-${name}`,
      LINE_STYLES[stroke],
      curves.map((curve) => movedBy(curve, dx)),
    );
  const xs = outlineCurves(edges).flatMap((curve) => curve.map((p) => p.x));
  const across = (level: number) => [straight(point(Math.min(...xs), level), point(Math.max(...xs), level))];
  return svgGroup(part, SVG_LINES, [
    ...edges.map(({ name, curves }) => line(name, 'cut', curves)),
    line('grainline', 'grain', [straight(...grainline)]),
    line('hip', 'level', across(hipLevel)),
    line('knee', 'level', across(kneeLevel)),
    ...darts.map(({ left, right, tip }, i) =>
      line(`dart-${i + 1}`, 'fold', [straight(left, tip), straight(tip, right)]),
    ),
    svgGroup(`${part}-text`, SVG_WORDS, [
      svgText({
        at: { x: dx + (Math.min(...xs) + Math.max(...xs)) / 2, y: (hipLevel + kneeLevel) / 2 },
        text: part === 'front' ? words`front` : words`back`,
        size: LETTERS,
        turn: 0,
      }),
    ]),
  ]);
}

const movedBy = (curve: Curve, dx: number): Curve => curveMap(curve, ({ x, y }) => point(x + dx, y));
