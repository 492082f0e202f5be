import type { Draft } from '../../project';
import { type Phrase, say } from '../../words';
import type { PdfOptions } from '../pen/options';
import type { LongWork, Progress } from '../work/long-work';
import type { FinishedFile } from '../zip/zip';

type Content = FinishedFile['content'];

/** What every entry says. */
export interface Kind {
  readonly kind: string;
  /** How long it takes against the quick ones, so that progress runs evenly; 1 where it is not said. */
  readonly weight?: number;
}

/** A kind of file that can be made of one draft. */
export interface SingleKind extends Kind {
  /** After the project's name. */
  readonly ending: string;
  readonly name: Phrase;
  /** What it is for, in a few words. */
  readonly what: Phrase;
  /** Its writer, with the libraries that it needs: loaded when a file of the kind is first made. */
  readonly load: () => Promise<(draft: Draft, options: PdfOptions) => Content | LongWork<Content>>;
}

/** A kind that is made of several drafts together. */
export interface TogetherKind extends Kind {
  /** Its writer, as for one draft; files are called by the name that they are given. */
  readonly load: () => Promise<
    (
      drafts: readonly [Draft, ...Draft[]],
      name: string,
      options: Omit<PdfOptions, 'fileName'>,
    ) => AsyncGenerator<Progress, readonly FinishedFile[]>
  >;
}

/** Every kind of file of one draft, in the order in which they are made and listed. */
export const SINGLE_FILES = [
  {
    kind: 'pdf',
    ending: '.pdf',
    name: say`Joined sheets, PDF`,
    what: say`to print at true scale at home`,
    load: async () => (await import('../pdf/tiled')).pdfWork,
    weight: 12,
  },
  {
    kind: 'large',
    ending: '.large.pdf',
    name: say`One large sheet, PDF`,
    what: say`for a print shop`,
    load: async () => (await import('../pdf/large')).writeLargePdf,
    weight: 3,
  },
  {
    kind: 'printer-test',
    ending: '.printer-test.pdf',
    name: say`Printer test, PDF`,
    what: say`two bars to measure, to correct the printer`,
    load: async () => (await import('../pdf/printer-test')).writePrinterTestPdf,
  },
  {
    kind: 'reference',
    ending: '.reference.pdf',
    name: say`Reference sheet, PDF`,
    what: say`four marks to photograph beside a paper block`,
    load: async () => (await import('../pdf/reference')).writeReferencePdf,
  },
  {
    kind: 'projector',
    ending: '.projector.pdf',
    name: say`Projector, PDF`,
    what: say`to throw on the cloth at true size`,
    load: async () => (await import('../pdf/projector')).projectorWork,
    weight: 2,
  },
  {
    kind: 'svg',
    ending: '.svg',
    name: say`Drawing, SVG`,
    what: say`true size, with named layers`,
    load: async () => (await import('../svg/pieces')).writeSvg,
  },
  {
    kind: 'blocks',
    ending: '.blocks.svg',
    name: say`Fitted blocks, SVG`,
    what: say`each edge by its name, to correct and bring back`,
    load: async () => (await import('../svg/blocks')).writeBlocksSvg,
  },
  {
    kind: 'dxf',
    ending: '.dxf',
    name: say`Cutting file, DXF`,
    what: say`millimetres, closed cut lines`,
    load: async () => (await import('../dxf/blocks')).writeDxf,
  },
  {
    kind: 'r12',
    ending: '.r12.dxf',
    name: say`Cutting file, DXF R12`,
    what: say`the same for old machines`,
    load: async () => (await import('../dxf/r12')).writeDxfR12,
  },
  {
    kind: 'guide',
    ending: '.guide.pdf',
    name: say`Sewing guide, PDF`,
    what: say`steps, lay and shopping list, to print`,
    load: async () => (await import('../guide/pdf')).writeGuidePdf,
  },
  {
    kind: 'guide-html',
    ending: '.guide.html',
    name: say`Sewing guide, page`,
    what: say`the same, to read on a screen`,
    load: async () => (await import('../guide/html')).writeGuideHtml,
  },
  {
    kind: 'fit',
    ending: '.fit.pdf',
    name: say`Fit sheet, PDF`,
    what: say`body and finished garment side by side, on one page`,
    load: async () => (await import('../fit/pdf')).writeFitPdf,
  },
  {
    kind: 'report',
    ending: '.report.json',
    name: say`Report`,
    what: say`every measure and check, for a program`,
    load: async () => (await import('../report/report')).writeReport,
  },
  {
    kind: 'handout',
    ending: '.handout.txt',
    name: say`Handout`,
    what: say`the working, to read in class`,
    load: async () => (await import('../guide/handout')).writeHandout,
  },
] as const satisfies readonly SingleKind[];

export type SingleFile = (typeof SINGLE_FILES)[number]['kind'];

/** Every kind that is made of several drafts together, in the order in which they are made. */
export const TOGETHER_FILES = [
  { kind: 'samples', load: async () => (await import('../pdf/samples')).samplesFiles, weight: 3 },
  { kind: 'nested', load: async () => (await import('../nest/files')).nestedFiles, weight: 20 },
] as const satisfies readonly TogetherKind[];

export type TogetherFile = (typeof TOGETHER_FILES)[number]['kind'];

/** Every kind that can be asked for: those of one draft, those of several together, and all of them in one file. */
export type FileKind = SingleFile | TogetherFile | 'zip';
export const FILE_KINDS: readonly FileKind[] = [...SINGLE_FILES, ...TOGETHER_FILES]
  .map(({ kind }): FileKind => kind)
  .concat('zip');
