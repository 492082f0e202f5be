/** A kind of file that can be made of one draft. */
interface SingleKind {
  readonly kind: string;
  /** After the project's name. */
  readonly ending: string;
  readonly name: string;
  /** What it is for, in a few words. */
  readonly what: string;
}

/** Every kind of file of one draft, in the order in which they are made and listed. */
export const SINGLE_FILES = [
  { kind: 'pdf', ending: '.pdf', name: 'Joined sheets, PDF', what: 'to print at true scale at home' },
  { kind: 'large', ending: '.large.pdf', name: 'One large sheet, PDF', what: 'for a print shop' },
  {
    kind: 'printer-test',
    ending: '.printer-test.pdf',
    name: 'Printer test, PDF',
    what: 'two bars to measure, to correct the printer',
  },
  {
    kind: 'reference',
    ending: '.reference.pdf',
    name: 'Reference sheet, PDF',
    what: 'four marks to photograph beside a paper block',
  },
  {
    kind: 'projector',
    ending: '.projector.pdf',
    name: 'Projector, PDF',
    what: 'to throw on the cloth at true size',
  },
  { kind: 'svg', ending: '.svg', name: 'Drawing, SVG', what: 'true size, with named layers' },
  {
    kind: 'blocks',
    ending: '.blocks.svg',
    name: 'Fitted blocks, SVG',
    what: 'each edge by its name, to correct and bring back',
  },
  {
    kind: 'dxf',
    ending: '.dxf',
    name: 'Cutting file, DXF',
    what: 'millimetres, closed cut lines',
  },
  {
    kind: 'r12',
    ending: '.r12.dxf',
    name: 'Cutting file, DXF R12',
    what: 'the same for old machines',
  },
  { kind: 'guide', ending: '.guide.pdf', name: 'Sewing guide, PDF', what: 'steps, lay and shopping list, to print' },
  { kind: 'guide-html', ending: '.guide.html', name: 'Sewing guide, page', what: 'the same, to read on a screen' },
  {
    kind: 'fit',
    ending: '.fit.pdf',
    name: 'Fit sheet, PDF',
    what: 'body and finished garment side by side, on one page',
  },
  {
    kind: 'report',
    ending: '.report.json',
    name: 'Report',
    what: 'every measure and check, for a program',
  },
  {
    kind: 'handout',
    ending: '.handout.txt',
    name: 'Handout',
    what: 'the working, to read in class',
  },
] as const satisfies readonly SingleKind[];

export type SingleFile = (typeof SINGLE_FILES)[number]['kind'];

/** The kinds that are made of several drafts together. */
export type TogetherFile = 'samples' | 'nested';

/** Every kind that can be asked for: those of one draft, those of several together, and all of them in one file. */
export type FileKind = SingleFile | TogetherFile | 'zip';
export const FILE_KINDS: readonly FileKind[] = [...SINGLE_FILES.map(({ kind }) => kind), 'samples', 'nested', 'zip'];
