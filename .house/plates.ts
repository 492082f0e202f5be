import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Block } from '../src/block';
import type { Piece } from '../src/edges';
import { formatLength } from '../src/length';
import { type Curve, outlineCurves, outlineEdge, type Point, pathStart, pathThrough } from '../src/plane';
import { checksOf, type Draft, draft, type Project } from '../src/project';
import { printPhrase, said } from '../src/words';
import { root } from './paths.mjs';
import { type PlateBody, plateBodies } from './plate-bodies';

// Contact sheets of blocks and legs, for a cutter's eye: `npm run plates` draws docs/plates/*.svg afresh.

const CELL = { width: 2720, height: 1560, columns: 3 } as const;
/** Where the side line of each drawing lies in its cell, and the waist level. */
const BLOCKS_AT = { x: 770, apart: 90, y: 300 } as const;
const LEG_AT = { x: 2080, y: 300 } as const;

const number = (value: number): string => value.toFixed(1);
const at = (p: Point): string => `${number(p.x)} ${number(p.y)}`;

function path(curves: readonly Curve[], className: string, shift = 0): string {
  let d = '';
  let pen: Point | undefined;
  for (const curve of curves) {
    const [a, b, c, e] = curve.map((p) => ({ x: p.x + shift, y: p.y })) as unknown as Curve;
    if (!pen || Math.hypot(pen.x - a.x, pen.y - a.y) > 0.01) d += `M${at(a)}`;
    d += `C${at(b)} ${at(c)} ${at(e)}`;
    pen = e;
  }
  return `<path class="${className}" d="${d}"/>`;
}

function cell(plate: PlateBody, index: number): string {
  const project = {
    format: 'legwork-project',
    version: 2,
    name: plate.name,
    body: { label: plate.name, ...plate.body },
    ...plate.rest,
  } as unknown as Project;
  const result = draft(project);
  const [x, y] = [(index % CELL.columns) * CELL.width, Math.floor(index / CELL.columns) * CELL.height];
  const inside = result.ok
    ? drawing(result.value)
    : `<text x="40" y="200">${result.problems.map((p) => `${p.field}: ${printPhrase(p.phrase, 'cm')}`).join(' ')}</text>`;
  return `<g transform="translate(${x} ${y})"><text class="title" x="40" y="80">${plate.name}</text>${inside}</g>`;
}

const crotchPointOf = (block: Block): Point => pathStart(outlineEdge(block.edges, 'inseam').curves);

/** A leg as it lies on its blocks; a left one, printed the other way round, lies under the right one. */
function pieceDrawn(piece: Piece): string {
  const left = piece.side === 'left';
  const inside =
    path(outlineCurves(piece.stitchLine), 'stitch') +
    path(outlineCurves(piece.cutLine), left ? 'left' : 'cut') +
    [...piece.lines, ...piece.folds].map((line) => path(line.curves, 'level')).join('') +
    piece.notches
      .map(
        (n) =>
          `<path class="cut" d="M${at(n.at)}L${at({ x: n.at.x + n.outward.x * n.length, y: n.at.y + n.outward.y * n.length })}"/>`,
      )
      .join('');
  return left ? `<g transform="scale(-1 1)">${inside}</g>` : inside;
}

function drawing(d: Draft): string {
  const { body, blocks, leg, measures } = d;
  const cm = (mm: number) => formatLength(mm, 'cm');
  // A cutter looks at these two closer than a tape reads.
  const tenths = (mm: number) => `${(Math.round(10 * mm) / 10 + 0).toFixed(1)} mm`;
  const words = [
    `waist ${cm(body.waistGirth)}, hip ${cm(body.hipGirth)}, rise ${cm(body.bodyRise)}, inside leg ${cm(body.insideLeg)}`,
    `crotch ${cm(measures.crotchLengthFinished)}${body.crotchLength === undefined ? '' : ` (off by ${tenths(measures.crotchFit)})`}, drop ${tenths(measures.backCrotchDrop)}, straightened ${measures.straighten.toFixed(2)}, leans ${measures.leanBack.toFixed(1)}° and ${measures.leanFront.toFixed(1)}°`,
    checksOf(d).every((c) => c.verdict === 'good')
      ? 'all checks good'
      : checksOf(d)
          .filter((c) => c.verdict !== 'good')
          .map((c) => `${said(c.name)}: ${c.verdict}`)
          .join(', '),
  ];
  const block = (part: 'front' | 'back', shift: number) =>
    path(outlineCurves(blocks[part].edges), part, shift) +
    blocks[part].darts.map((dart) => path(pathThrough(dart.left, dart.tip, dart.right), 'thin', shift)).join('') +
    [blocks[part].hipLevel, blocks[part].crotchLevel, blocks[part].kneeLevel]
      .map((level) =>
        path(pathThrough({ x: 0, y: level }, { x: crotchPointOf(blocks[part]).x, y: level }), 'level', shift),
      )
      .join('');
  const onLeg =
    path(leg.joined.front, 'front') +
    path(leg.joined.back, 'back') +
    d.pieces
      .filter(({ kind }) => kind === 'leg' || kind === 'forkTip')
      .map(pieceDrawn)
      .join('');
  return `${words.map((text, i) => `<text x="40" y="${128 + 40 * i}">${text}</text>`).join('')}
<g transform="translate(${BLOCKS_AT.x} ${BLOCKS_AT.y})">${block('back', -BLOCKS_AT.apart / 2)}${block('front', BLOCKS_AT.apart / 2)}</g>
<g transform="translate(${LEG_AT.x} ${LEG_AT.y})">${onLeg}</g>`;
}

const STYLE = `text{font:32px "Source Sans 3",sans-serif;fill:#1F2A33}.title{font-size:46px;font-weight:600}path{fill:none;stroke-width:2.4}
.front{stroke:#33508A}.back{stroke:#A6403A}.thin{stroke:#8A8175}.level{stroke:#8A8175;stroke-width:1.4;stroke-dasharray:4 6}
.stitch{stroke:#4E7A4A;stroke-dasharray:22 8}.cut{stroke:#1F2A33;stroke-width:3.6}.left{stroke:#1F2A33;stroke-width:3.6;stroke-dasharray:3 9}`;

const folder = join(root, 'docs', 'plates');
mkdirSync(folder, { recursive: true });
plateBodies.forEach((bodies, i) => {
  const rows = Math.ceil(bodies.length / CELL.columns);
  const [width, height] = [CELL.width * CELL.columns, CELL.height * rows];
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width / 4}" height="${height / 4}"><style>${STYLE}</style><rect width="${width}" height="${height}" fill="#FAF6EE"/>${bodies.map(cell).join('\n')}</svg>\n`;
  writeFileSync(join(folder, `plate-${i + 1}.svg`), svg);
});
