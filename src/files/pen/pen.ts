import { jsPDF } from 'jspdf';
import { type LineStyle, mmOfPt, printedLetters } from '../../drawing';
import { type Mm, plainWords } from '../../length';
import { type Box, type Curve, curveIsStraight, type Point } from '../../plane';
import { type FileLayer, layersWith } from '../content/layers';
import { pdfLayers } from './layers';

/** Where a point of the drawing comes to lie on the page, both in millimetres. */
export type PageMap = (p: Point) => Point;

/** How words are set: `at` is the end of the baseline that `align` names. */
export interface WordStyle {
  /** Font size in points. */
  readonly pt: number;
  readonly colour: string;
  readonly align?: 'left' | 'middle' | 'right';
  /** Degrees, clockwise as seen. */
  readonly turn?: number;
  /** A rim of this colour keeps words legible on lines and hatching. */
  readonly rim?: string;
  /** Fatter strokes, as wide from letter to letter as plain ones; not together with a rim. */
  readonly bold?: boolean | undefined;
}

/** Draws on the pages of one PDF, in millimetres from the upper left corner of the page. */
export interface Pen {
  readonly newPage: (width: Mm, height: Mm) => void;
  /** What a text takes in the embedded font. */
  readonly widthOf: (text: string, pt: number) => Mm;
  readonly words: (text: string, at: Point, style: WordStyle) => void;
  /** A run of curves; `phase` is how far the dashes have already run. */
  readonly stroke: (
    curves: readonly Curve[],
    map: PageMap,
    style: LineStyle,
    options?: { closed?: boolean; phase?: Mm },
  ) => void;
  readonly fill: (curves: readonly Curve[], map: PageMap, colour: string) => void;
  readonly line: (from: Point, to: Point, style: LineStyle) => void;
  readonly frame: (box: Box, style: LineStyle) => void;
  /** What `draw` draws, cut off at the box. */
  readonly within: (box: Box, draw: () => void) => void;
  /** What `draw` draws, on the layer of that id, which a reader can switch off. */
  readonly onLayer: (id: string, draw: () => void) => void;
  readonly bytes: () => Uint8Array;
}

/** What the document says about itself. */
export interface DocumentFacts {
  readonly title: string;
  readonly subject: string;
  readonly date: Date;
  /** Asks the printer for one side of the paper only: what is cut and laid together has no back. */
  readonly oneSided?: boolean;
  /** The layers that it may have, from the bottom up; those of a drawing where they are left out. */
  readonly layers?: readonly FileLayer[];
}

const FONT = 'LegworkPrint';
/** Decimals of a point that are written: a third of a thousandth of a millimetre. */
const DECIMALS = 3;
/** How wide a rim is drawn round letters, of their size. */
const RIM = 0.22;
/** How much fatter bold letters are drawn, of their size: their own outline is stroked, which spares a second font. */
const BOLD = 0.035;
/** Stands for a character that the print font doesn't have. */
const MISSING = '?';

/**
 * Starts a PDF with its first page.
 *
 * @param font a TrueType font; it is embedded, cut down to what is used
 * @param facts what the document says about itself; the same facts and drawings give the same bytes
 */
export function startPdf(width: Mm, height: Mm, font: Uint8Array, facts: DocumentFacts): Pen {
  const orientation = (w: Mm, h: Mm) => (w > h ? 'landscape' : 'portrait');
  const doc = new jsPDF({
    unit: 'mm',
    format: [width, height],
    orientation: orientation(width, height),
    compress: true,
    putOnlyUsedFonts: true,
    floatPrecision: DECIMALS,
  });
  doc.addFileToVFS('print.ttf', binaryText(font));
  doc.addFont('print.ttf', FONT, 'normal');
  doc.setFont(FONT, 'normal');
  const [title, subject] = [plainWords(facts.title), plainWords(facts.subject)];
  doc.setDocumentProperties({ title, subject, author: 'Legwork', creator: 'Legwork' });
  setDate(doc, facts.date);
  // The writer draws a random identity otherwise, and the same drawing would never give the same bytes.
  doc.setFileId('0'.repeat(32));
  doc.viewerPreferences({ PrintScaling: 'None', ...(facts.oneSided ? { Duplex: 'Simplex' } : {}) });
  doc.setLineJoin('round');

  const { known, advance } = glyphsOf(doc);
  const printable = (text: string) => [...printedLetters(text)].map((c) => (known(c) ? c : MISSING)).join('');
  // Words are measured again and again, in many sizes, while their place is sought.
  const ems = new Map<string, number>();
  const emsOf = (text: string): number => {
    let sum = ems.get(text);
    if (sum === undefined) {
      sum = [...printable(text)].reduce((so, c) => so + advance(c), 0);
      ems.set(text, sum);
    }
    return sum;
  };
  const widthOf = (text: string, pt: number) => emsOf(text) * mmOfPt(pt);
  const style = ({ width, colour, dash }: LineStyle, phase = 0) => {
    doc.setLineWidth(width);
    doc.setDrawColor(colour);
    doc.setLineDashPattern([...dash], phase);
  };
  const trace = (curves: readonly Curve[], map: PageMap, closed: boolean) => {
    let pen: Point | undefined;
    for (const curve of curves) {
      const [a, b, c, d] = curve.map(map) as [Point, Point, Point, Point];
      if (!pen || pen.x !== a.x || pen.y !== a.y) doc.moveTo(a.x, a.y);
      if (curveIsStraight(curve)) doc.lineTo(d.x, d.y);
      else doc.curveTo(b.x, b.y, c.x, c.y, d.x, d.y);
      pen = d;
    }
    if (closed) doc.close();
  };

  return {
    newPage: (w, h) => {
      doc.addPage([w, h], orientation(w, h));
      doc.setLineJoin('round');
    },
    widthOf,
    words: (text, at, { pt, colour, align = 'left', turn = 0, rim, bold = false }) => {
      const shown = printable(text);
      const back = align === 'left' ? 0 : widthOf(shown, pt) / (align === 'middle' ? 2 : 1);
      const angle = (turn * Math.PI) / 180;
      doc.setFontSize(pt);
      doc.setTextColor(colour);
      // The writer aligns turned text as if it lay flat, so the start of the baseline is worked out here.
      const start = [at.x - back * Math.cos(angle), at.y - back * Math.sin(angle)] as const;
      const turned = turn === 0 ? {} : { angle: -turn };
      if (rim !== undefined) {
        style({ width: RIM * mmOfPt(pt), colour: rim, dash: [] });
        doc.text(shown, ...start, { ...turned, renderingMode: 'stroke' });
      }
      if (bold) {
        style({ width: BOLD * mmOfPt(pt), colour, dash: [] });
        doc.text(shown, ...start, { ...turned, renderingMode: 'fillThenStroke' });
        return;
      }
      doc.text(shown, ...start, rim === undefined ? turned : { ...turned, renderingMode: 'fill' });
    },
    stroke: (curves, map, line, { closed = false, phase = 0 } = {}) => {
      if (curves.length === 0) return;
      style(line, phase);
      trace(curves, map, closed);
      doc.stroke();
    },
    fill: (curves, map, colour) => {
      doc.setFillColor(colour);
      trace(curves, map, true);
      doc.fill();
    },
    line: (from, to, line) => {
      style(line);
      doc.line(from.x, from.y, to.x, to.y);
    },
    frame: (box, line) => {
      style(line);
      doc.rect(box.left, box.top, box.right - box.left, box.bottom - box.top, 'S');
    },
    within: (box, draw) => {
      doc.saveGraphicsState();
      doc.rect(box.left, box.top, box.right - box.left, box.bottom - box.top, null);
      doc.clip();
      doc.discardPath();
      draw();
      doc.restoreGraphicsState();
    },
    onLayer: pdfLayers(doc, facts.layers ?? layersWith()),
    bytes: () => new Uint8Array(doc.output('arraybuffer')),
  };
}

/** A font as the writer holds it: it tells each character's glyph, none or 0 where it has none, and each glyph's width. */
interface Embedded {
  readonly metadata: {
    readonly characterToGlyph: (code: number) => number | undefined;
    /** In thousandths of the size of type. */
    readonly widthOfGlyph: (glyph: number) => number;
  };
}

const isEmbedded = (font: object): font is Embedded => 'metadata' in font;

/** What the embedded font says of a character: whether it has it, and how wide it is set, of the size of type. */
function glyphsOf(doc: jsPDF) {
  const font = doc.getFont();
  if (!isEmbedded(font)) throw new TypeError('this font doesn’t tell its characters');
  const glyphs = new Map<string, number>();
  const glyphOf = (character: string): number => {
    const told = glyphs.get(character) ?? font.metadata.characterToGlyph(character.codePointAt(0) ?? 0) ?? 0;
    glyphs.set(character, told);
    return told;
  };
  return {
    known: (character: string): boolean => glyphOf(character) > 0,
    advance: (character: string): number => font.metadata.widthOfGlyph(glyphOf(character)) / 1000,
  };
}

/** When the writer asks its plug-ins about a text: before it is encoded, and after. */
const [BEFORE, AFTER] = ['preProcessText', 'postProcessText'];

/**
 * The writer shapes every text for scripts that the print font doesn't have, and puts it in their order; most of the
 * time of a PDF would go there. What encodes the text comes first of those that are asked after, and is all that is left.
 */
jsPDF.API.events = jsPDF.API.events.filter(
  ([when], i, all) => when !== BEFORE && (when !== AFTER || i === all.findIndex(([one]) => one === AFTER)),
);

function binaryText(bytes: Uint8Array): string {
  const parts: string[] = [];
  for (let i = 0; i < bytes.length; i += 8192) parts.push(String.fromCharCode(...bytes.subarray(i, i + 8192)));
  return parts.join('');
}

/** In universal time, so that the bytes don't depend on where they were written. */
function setDate(doc: jsPDF, date: Date): void {
  const text = `D:${date.toISOString().slice(0, 19).replace(/[-T:]/g, '')}+00'00'`;
  // The writer's own test of this form ends with the year 2037; after that it may only be given in local time.
  if (date.getUTCFullYear() <= 2037) doc.setCreationDate(text);
  else doc.setCreationDate(date);
}
