import fontkit from '@pdf-lib/fontkit';
import {
  appendBezierCurve,
  clip,
  closePath,
  degrees,
  endPath,
  fill,
  LineCapStyle,
  lineTo,
  moveTo,
  PDFDocument,
  type PDFPage,
  popGraphicsState,
  pushGraphicsState,
  rgb,
  setDashPattern,
  setFillingRgbColor,
  setLineCap,
  setLineWidth,
  setStrokingRgbColor,
  stroke,
} from 'pdf-lib';
import PdfKit from 'pdfkit';
import type { Pen } from '../../src/files/pen/pen';
import { type Curve, curveIsStraight, type Point, point, straight } from '../../src/plane';

/** Points of the printing trade in a millimetre. */
const PT = 72 / 25.4;

/** A pen of another library; its bytes come later than ours. */
export interface OtherPen {
  readonly pen: Pen;
  readonly bytes: () => Promise<Uint8Array>;
}

const parts = (colour: string) =>
  [1, 3, 5].map((i) => Number.parseInt(colour.slice(i, i + 2), 16) / 255) as [number, number, number];

type Step = (to: {
  readonly move: (p: Point) => void;
  readonly line: (p: Point) => void;
  readonly curve: (a: Point, b: Point, c: Point) => void;
}) => void;

/** A run of curves as the three strokes that every writer knows. */
const traced =
  (curves: readonly Curve[], map: (p: Point) => Point): Step =>
  ({ move, line, curve }) => {
    let pen: Point | undefined;
    for (const one of curves) {
      const [a, b, c, d] = one.map(map) as [Point, Point, Point, Point];
      if (!pen || pen.x !== a.x || pen.y !== a.y) move(a);
      if (curveIsStraight(one)) line(d);
      else curve(b, c, d);
      pen = d;
    }
  };

const boxCurves = ({ left, top, right, bottom }: { left: number; top: number; right: number; bottom: number }) => {
  const corners = [point(left, top), point(right, top), point(right, bottom), point(left, bottom)];
  return corners.map((corner, i) => straight(corner, corners[(i + 1) % 4] as Point));
};

const same = (p: Point): Point => p;

/** The same drawing by pdf-lib, its font embedded and cut down. */
export async function pdfLibPen(width: number, height: number, font: Uint8Array): Promise<OtherPen> {
  const doc = await PDFDocument.create();
  doc.registerFontkit(fontkit);
  const face = await doc.embedFont(font, { subset: true });
  let page: PDFPage = doc.addPage([width * PT, height * PT]);
  const y = (mm: number) => page.getHeight() - mm * PT;
  const trace = (step: Step) =>
    step({
      move: (p) => page.pushOperators(moveTo(p.x * PT, y(p.y))),
      line: (p) => page.pushOperators(lineTo(p.x * PT, y(p.y))),
      curve: (a, b, c) => page.pushOperators(appendBezierCurve(a.x * PT, y(a.y), b.x * PT, y(b.y), c.x * PT, y(c.y))),
    });
  const widthOf = (text: string, pt: number) => face.widthOfTextAtSize(text, pt) / PT;
  const drawn: Pen['stroke'] = (curves, map, { width: w, colour, dash }, { closed = false, phase = 0 } = {}) => {
    page.pushOperators(
      pushGraphicsState(),
      setLineWidth(w * PT),
      setStrokingRgbColor(...parts(colour)),
      setLineCap(LineCapStyle.Butt),
      setDashPattern(
        dash.map((part) => part * PT),
        phase * PT,
      ),
    );
    trace(traced(curves, map));
    page.pushOperators(...(closed ? [closePath()] : []), stroke(), popGraphicsState());
  };
  const pen: Pen = {
    newPage: (w, h) => {
      page = doc.addPage([w * PT, h * PT]);
    },
    widthOf,
    words: (text, at, { pt, colour, align = 'left', turn = 0 }) => {
      const back = align === 'left' ? 0 : widthOf(text, pt) / (align === 'middle' ? 2 : 1);
      const angle = (turn * Math.PI) / 180;
      page.drawText(text, {
        x: (at.x - back * Math.cos(angle)) * PT,
        y: y(at.y - back * Math.sin(angle)),
        size: pt,
        font: face,
        color: rgb(...parts(colour)),
        rotate: degrees(-turn),
      });
    },
    stroke: drawn,
    fill: (curves, map, colour) => {
      page.pushOperators(setFillingRgbColor(...parts(colour)));
      trace(traced(curves, map));
      page.pushOperators(closePath(), fill());
    },
    line: (from, to, style) => drawn([straight(from, to)], same, style),
    frame: (box, style) => drawn(boxCurves(box), same, style, { closed: true }),
    within: (box, draw) => {
      page.pushOperators(pushGraphicsState());
      trace(traced(boxCurves(box), same));
      page.pushOperators(clip(), endPath());
      draw();
      page.pushOperators(popGraphicsState());
    },
    // It has layers by hand only; the drawing looks the same without.
    onLayer: (_, draw) => draw(),
    bytes: () => new Uint8Array(),
  };
  return { pen, bytes: () => doc.save() };
}

/** The same drawing by pdfkit. */
export function pdfKitPen(width: number, height: number, font: Uint8Array): OtherPen {
  const doc = new PdfKit({ size: [width * PT, height * PT], margin: 0, compress: true });
  const chunks: Buffer[] = [];
  doc.on('data', (chunk: Buffer) => chunks.push(chunk));
  const ended = new Promise<void>((resolve) => doc.on('end', resolve));
  doc.registerFont('print', Buffer.from(font)).font('print');
  const trace = (step: Step) =>
    step({
      move: (p) => doc.moveTo(p.x * PT, p.y * PT),
      line: (p) => doc.lineTo(p.x * PT, p.y * PT),
      curve: (a, b, c) => doc.bezierCurveTo(a.x * PT, a.y * PT, b.x * PT, b.y * PT, c.x * PT, c.y * PT),
    });
  const widthOf = (text: string, pt: number) => doc.fontSize(pt).widthOfString(text) / PT;
  const drawn: Pen['stroke'] = (curves, map, { width: w, colour, dash }, { closed = false, phase = 0 } = {}) => {
    doc.lineWidth(w * PT).strokeColor(colour);
    if (dash.length > 0) doc.dash(dash.map((part) => part * PT) as unknown as number, { phase: phase * PT });
    else doc.undash();
    trace(traced(curves, map));
    if (closed) doc.closePath();
    doc.stroke();
  };
  const pen: Pen = {
    newPage: (w, h) => {
      doc.addPage({ size: [w * PT, h * PT], margin: 0 }).font('print');
    },
    widthOf,
    words: (text, at, { pt, colour, align = 'left', turn = 0 }) => {
      const back = align === 'left' ? 0 : widthOf(text, pt) / (align === 'middle' ? 2 : 1);
      doc.save();
      doc.translate(at.x * PT, at.y * PT).rotate(turn);
      doc
        .fontSize(pt)
        .fillColor(colour)
        .text(text, -back * PT, 0, { lineBreak: false, baseline: 'alphabetic' });
      doc.restore();
    },
    stroke: drawn,
    fill: (curves, map, colour) => {
      trace(traced(curves, map));
      doc.closePath().fill(colour);
    },
    line: (from, to, style) => drawn([straight(from, to)], same, style),
    frame: (box, style) => drawn(boxCurves(box), same, style, { closed: true }),
    within: (box, draw) => {
      doc.save();
      trace(traced(boxCurves(box), same));
      doc.clip();
      draw();
      doc.restore();
    },
    onLayer: (_, draw) => draw(),
    bytes: () => new Uint8Array(),
  };
  return {
    pen,
    bytes: async () => {
      doc.end();
      await ended;
      return Buffer.concat(chunks);
    },
  };
}
