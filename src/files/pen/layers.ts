import type { jsPDF } from 'jspdf';
import type { Layer } from '../../drawing';
import { type Phrase, said, say } from '../../words';

/** What can be switched on and off in a PDF: the drawing's layers, and what belongs to the sheets. */
export type PdfLayer = Layer | 'joins';

/** The layers by the names that a reader's list shows, from the top of the list. */
const NAMES: Readonly<Record<PdfLayer, Phrase>> = {
  cut: say`Cut line`,
  stitch: say`Stitching`,
  folds: say`Folds`,
  levels: say`Levels and side`,
  marks: say`Notches and grain`,
  text: say`Words`,
  joins: say`Joins and sheet labels`,
};
const ORDER = Object.keys(NAMES) as readonly PdfLayer[];

/** A text in the document's own code: plain letters as they are, others as UTF-16 (ISO 32000-1, 7.9.2.2). */
const textString = (text: string): string =>
  /^[\w ]*$/.test(text)
    ? `(${text})`
    : `<${[...`\uFEFF${text}`].map((letter) => letter.charCodeAt(0).toString(16).padStart(4, '0')).join('')}>`;

/** What the writer keeps to itself but calls out at the right moments. */
interface Inside {
  readonly events: { readonly subscribe: (topic: string, call: () => void) => void };
  readonly newObject: () => number;
  readonly out: (line: string) => void;
}

const isInside = (internal: object): internal is Inside => 'newObject' in internal && 'out' in internal;

/** A document that can be told which version of PDF it keeps to. */
interface Versioned {
  readonly __private__: { readonly setPdfVersion: (version: string) => void };
}

const isVersioned = (doc: object): doc is Versioned => '__private__' in doc;

/**
 * Optional content (ISO 32000-1, 8.11) for a document whose writer knows none: it calls out when it writes the
 * resources and the catalogue, and the groups are put in there.
 *
 * @returns draws something on a layer; what is drawn outside of it is always shown
 */
export function pdfLayers(doc: jsPDF): (layer: PdfLayer, draw: () => void) => void {
  const { internal } = doc;
  if (!isInside(internal)) throw new TypeError('this PDF writer can’t be asked for layers');
  const { events, newObject, out } = internal;
  const objects = new Map<PdfLayer, number>();
  const used = new Set<PdfLayer>();
  const shown = () => ORDER.filter((layer) => used.has(layer));
  const references = () =>
    shown()
      .map((layer) => `${objects.get(layer)} 0 R`)
      .join(' ');
  events.subscribe('putResources', () => {
    for (const layer of shown()) {
      objects.set(layer, newObject());
      out(`<</Type /OCG /Name ${textString(said(NAMES[layer]))}>>`);
      out('endobj');
    }
  });
  // The resources hold pictures' names last and leave their own dictionary open; the layers' names follow in the next.
  events.subscribe('putXobjectDict', () => {
    if (used.size === 0) return;
    out('>>');
    out('/Properties <<');
    for (const layer of shown()) out(`/${layer} ${objects.get(layer)} 0 R`);
  });
  events.subscribe('putCatalog', () => {
    if (used.size > 0)
      out(`/OCProperties <</OCGs [${references()}] /D <</Order [${references()}] /ON [${references()}]>>>>`);
  });
  return (layer, draw) => {
    if (used.size === 0 && isVersioned(doc)) doc.__private__.setPdfVersion('1.5');
    used.add(layer);
    out(`/OC /${layer} BDC`);
    draw();
    out('EMC');
  };
}
