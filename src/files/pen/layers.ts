import type { jsPDF } from 'jspdf';
import { said } from '../../words';
import type { FileLayer } from '../content/layers';

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
 * resources and the catalogue, and the groups are put in there. A reader's list shows the uppermost layer first.
 *
 * @param layers those that it may have, from the bottom up
 * @returns draws something on the layer of that id; what is drawn outside of it is always shown
 */
export function pdfLayers(doc: jsPDF, layers: readonly FileLayer[]): (id: string, draw: () => void) => void {
  const { internal } = doc;
  if (!isInside(internal)) throw new TypeError('this PDF writer can’t be asked for layers');
  const { events, newObject, out } = internal;
  const objects = new Map<string, number>();
  const used = new Set<string>();
  const shown = () => [...layers].reverse().filter(({ id }) => used.has(id));
  const references = () =>
    shown()
      .map(({ id }) => `${objects.get(id)} 0 R`)
      .join(' ');
  events.subscribe('putResources', () => {
    for (const { id, name } of shown()) {
      objects.set(id, newObject());
      out(`<</Type /OCG /Name ${textString(said(name))}>>`);
      out('endobj');
    }
  });
  // The resources hold pictures' names last and leave their own dictionary open; the layers' names follow in the next.
  events.subscribe('putXobjectDict', () => {
    if (used.size === 0) return;
    out('>>');
    out('/Properties <<');
    for (const { id } of shown()) out(`/${id} ${objects.get(id)} 0 R`);
  });
  events.subscribe('putCatalog', () => {
    if (used.size > 0)
      out(`/OCProperties <</OCGs [${references()}] /D <</Order [${references()}] /ON [${references()}]>>>>`);
  });
  return (id, draw) => {
    if (!layers.some((layer) => layer.id === id)) throw new TypeError(`this document has no layer ${id}`);
    if (used.size === 0 && isVersioned(doc)) doc.__private__.setPdfVersion('1.5');
    used.add(id);
    out(`/OC /${id} BDC`);
    draw();
    out('EMC');
  };
}
