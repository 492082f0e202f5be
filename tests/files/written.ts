import { carriedOut, type Onlooker, type PdfOptions } from '../../src/files';
import { writeDxf as writeDxf2007 } from '../../src/files/dxf/blocks';
import { writeDxfR12 } from '../../src/files/dxf/r12';
import { pdfWork } from '../../src/files/pdf/tiled';
import type { Draft } from '../../src/project';

/** The tiled PDF at once. */
export const writePdf = (draft: Draft, options: PdfOptions, onlooker?: Onlooker): Promise<Uint8Array> =>
  carriedOut(pdfWork(draft, options), onlooker);

/** A cutting file of either kind. */
export const writeDxf = (draft: Draft, kind: '2007' | 'R12' = '2007'): string =>
  kind === 'R12' ? writeDxfR12(draft) : writeDxf2007(draft);
