import { type Draft, reprintOf } from '../../project';
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

/** Where a file is used: the sheets at home, the test of the printer there, at the sewing machine, to set the projector, … */
export type FileUse =
  | 'sheets'
  | 'printer'
  | 'sewing'
  | 'printShop'
  | 'machine'
  | 'setting'
  | 'projector'
  | 'class'
  | 'other';

/** A kind of file that can be made of one draft. */
export interface SingleKind extends Kind {
  /** After the project's name. */
  readonly ending: string;
  readonly name: Phrase;
  /** What it is for, in a sentence. */
  readonly what: Phrase;
  /** Where it is used: files of one use stand together. */
  readonly use: FileUse;
  /** Of which drafts it can be made, where not of all; it is no part of “everything” of the others. */
  readonly of?: (draft: Draft) => boolean;
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
    name: say`Sheets to tape together, PDF`,
    what: say`The pattern at true scale, on the paper of your own printer.`,
    use: 'sheets',
    load: async () => (await import('../pdf/tiled')).pdfWork,
    weight: 12,
  },
  {
    kind: 'changed',
    ending: '.changed.pdf',
    name: say`Only changed sheets, PDF`,
    what: say`To exchange in a pattern that was printed before, with a list of what to throw away and what to keep.`,
    use: 'sheets',
    of: (draft) => (reprintOf(draft)?.anew.length ?? 0) > 0,
    load: async () => (await import('../pdf/tiled')).changedWork,
    weight: 5,
  },
  {
    kind: 'large',
    ending: '.large.pdf',
    name: say`One large sheet, PDF`,
    what: say`The whole pattern on one sheet, nothing to tape: a print shop prints it at 100 %.`,
    use: 'printShop',
    load: async () => (await import('../pdf/large')).writeLargePdf,
    weight: 3,
  },
  {
    kind: 'printer-test',
    ending: '.printer-test.pdf',
    name: say`Test page, PDF`,
    what: say`Two bars to measure: if your printer is a little off, type what they measure and the pattern is corrected.`,
    use: 'printer',
    load: async () => (await import('../pdf/printer-test')).writePrinterTestPdf,
  },
  {
    kind: 'reference',
    ending: '.reference.pdf',
    name: say`Mark sheets, PDF`,
    what: say`Numbered marks to photograph beside a paper block.`,
    use: 'other',
    load: async () => (await import('../pdf/reference')).writeReferencePdf,
  },
  {
    kind: 'projector',
    ending: '.projector.pdf',
    name: say`Projector, PDF`,
    what: say`The pattern in thick lines, to project onto the cloth at true size. Grid, words and each kind of line can be switched off as layers.`,
    use: 'projector',
    load: async () => (await import('../pdf/projector')).projectorWork,
    weight: 2,
  },
  {
    kind: 'projector-test',
    ending: '.projector-test.pdf',
    name: say`Projector test, PDF`,
    what: say`Four lines to measure on the cutting table: if your projector is a little off, type what they measure and the pattern is corrected.`,
    use: 'setting',
    load: async () => (await import('../pdf/projector-test')).writeProjectorTestPdf,
  },
  {
    kind: 'svg',
    ending: '.svg',
    name: say`Drawing, SVG`,
    what: say`True size, each kind of line in a layer with its name, for cutting and drawing programs.`,
    use: 'machine',
    load: async () => (await import('../svg/pieces')).writeSvg,
  },
  {
    kind: 'blocks',
    ending: '.blocks.svg',
    name: say`Fitted blocks, SVG`,
    what: say`Each edge by its name, to correct in a drawing program and bring back.`,
    use: 'other',
    load: async () => (await import('../svg/blocks')).writeBlocksSvg,
  },
  {
    kind: 'dxf',
    ending: '.dxf',
    name: say`Cutting file, DXF`,
    what: say`For a cutting machine: in millimetres, with closed cut lines and the notches as lines and points.`,
    use: 'machine',
    load: async () => (await import('../dxf/blocks')).writeDxf,
  },
  {
    kind: 'r12',
    ending: '.r12.dxf',
    name: say`Cutting file, DXF R12`,
    what: say`The same for older machines.`,
    use: 'machine',
    load: async () => (await import('../dxf/r12')).writeDxfR12,
  },
  {
    kind: 'guide',
    ending: '.guide.pdf',
    name: say`Sewing guide, PDF`,
    what: say`Every step with its picture, the lay and the shopping list, to print and lay beside the machine.`,
    use: 'sewing',
    load: async () => (await import('../guide/pdf')).writeGuidePdf,
  },
  {
    kind: 'guide-html',
    ending: '.guide.html',
    name: say`Sewing guide, page`,
    what: say`The same to read on a screen, without a network.`,
    use: 'sewing',
    load: async () => (await import('../guide/html')).writeGuideHtml,
  },
  {
    kind: 'fit',
    ending: '.fit.pdf',
    name: say`Fit sheet, PDF`,
    what: say`Body and finished garment side by side on one page, with room for notes at the fitting.`,
    use: 'sewing',
    load: async () => (await import('../fit/pdf')).writeFitPdf,
  },
  {
    kind: 'report',
    ending: '.report.json',
    name: say`Report`,
    what: say`Every measure and every check, for a program to read.`,
    use: 'other',
    load: async () => (await import('../report/report')).writeReport,
  },
  {
    kind: 'handout',
    ending: '.handout.pdf',
    name: say`Handout, PDF`,
    what: say`The working, step by step with its drawings and numbers, to hand out, pin up or project in class.`,
    use: 'class',
    load: async () => (await import('../guide/handout')).writeHandoutPdf,
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
