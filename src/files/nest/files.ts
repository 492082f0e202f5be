import type { Draft } from '../../project';
import type { PdfOptions } from '../pen/options';
import { type Progress, partOf } from '../work/long-work';
import type { FinishedFile } from '../zip/zip';
import { nestedLargeWork } from './large';
import { nestOf } from './nest';
import { writeNestedSvg } from './svg';
import { nestedWork } from './tiled';

/**
 * Several bodies on one drawing, three times: on joined sheets, on one large sheet, as SVG.
 *
 * @param name what the files are called, without `.nested` and their endings
 * @throws Refusal where these drafts can't be drawn together
 */
export async function* nestedFiles(
  drafts: readonly Draft[],
  name: string,
  options: Omit<PdfOptions, 'fileName'>,
): AsyncGenerator<Progress, readonly FinishedFile[]> {
  const nest = nestOf(drafts);
  const fileName = `${name}.nested.pdf`;
  const sheets = yield* partOf(nestedWork(nest, { ...options, fileName }), 0, 0.8, '');
  const large = yield* partOf(nestedLargeWork(nest, options), 0.8, 0.95, '');
  return [
    { name: fileName, content: sheets },
    { name: `${name}.nested.large.pdf`, content: large },
    { name: `${name}.nested.svg`, content: writeNestedSvg(nest) },
  ];
}
