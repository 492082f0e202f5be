import type { Draft, Project } from '../../project';
import type { Nest } from '../nest/nest';
import type { PdfOptions } from '../pen/options';
import { carriedOut, type Onlooker, type Steps } from '../work/steps';

/**
 * The tiled PDF: the first sheet, then every sheet of the plan at true scale. The writer is loaded when it is first
 * asked for, because it is heavier than all the rest.
 *
 * @param draft the finished draft; its plan says the paper and the sheets
 * @param options the print font, the date, the file's name
 * @param onlooker told of each sheet; may stop it
 * @returns the bytes of the file; the same draft and options give the same bytes
 */
export async function writePdf(draft: Draft, options: PdfOptions, onlooker?: Onlooker): Promise<Uint8Array> {
  return carriedOut(await pdfWork(draft, options), onlooker);
}

/** The tiled PDF as long work: a step for each sheet. */
export const pdfWork = async (draft: Draft, options: PdfOptions): Promise<Steps<Uint8Array>> =>
  (await import('../pdf/tiled')).pdfSteps(draft, options);

/** The pattern for a projector as long work: a step for each page, of which there is one as a rule. */
export const projectorWork = async (draft: Draft, options: PdfOptions): Promise<Steps<Uint8Array>> =>
  (await import('../pdf/projector')).projectorSteps(draft, options);

/**
 * All pieces on one sheet of the size they need, at true scale.
 *
 * @param draft the finished draft
 * @param options the print font, the date
 * @throws Refusal where the sheet would be larger than a PDF page can be (5,080 mm)
 */
export async function writeLargePdf(draft: Draft, options: PdfOptions): Promise<Uint8Array> {
  return (await import('../pdf/large')).writeLargePdf(draft, options);
}

/**
 * The sewing guide with cloth and shopping list, as pages to print.
 *
 * @param draft the finished draft
 * @param options the print font, the date
 */
export async function writeGuidePdf(draft: Draft, options: PdfOptions): Promise<Uint8Array> {
  return (await import('../guide/pdf')).writeGuidePdf(draft, options);
}

/** The printer's test page: what its two bars measure corrects the printer. */
export async function writePrinterTestPdf(project: Project, options: PdfOptions): Promise<Uint8Array> {
  return (await import('../pdf/printer-test')).writePrinterTestPdf(project, options);
}

/** The sheet that is photographed beside a paper block, to trace it from. */
export async function writeReferencePdf(project: Project, options: PdfOptions): Promise<Uint8Array> {
  return (await import('../pdf/reference')).writeReferencePdf(project, options);
}

/** Several bodies on one drawing, on joined sheets, as long work: a step for each sheet. */
export const nestedWork = async (nest: Nest, options: PdfOptions): Promise<Steps<Uint8Array>> =>
  (await import('../nest/tiled')).nestedSteps(nest, options);

/** Several bodies on one large sheet. */
export const nestedLargeWork = async (nest: Nest, options: PdfOptions): Promise<Steps<Uint8Array>> =>
  (await import('../nest/large')).nestedLargeSteps(nest, options);

/** Quarter-scale handouts of one or more bodies, several to a page, as long work: a step for each page. */
export const samplesWork = async (
  drafts: readonly [Draft, ...Draft[]],
  options: PdfOptions,
): Promise<Steps<Uint8Array>> => (await import('../pdf/samples')).samplesSteps(drafts, options);

/**
 * The fit sheet: one page with the body beside the finished garment.
 *
 * @param draft the finished draft
 * @param options the print font, the date
 */
export async function writeFitPdf(draft: Draft, options: PdfOptions): Promise<Uint8Array> {
  return (await import('../fit/pdf')).writeFitPdf(draft, options);
}
