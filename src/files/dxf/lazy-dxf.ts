import type { Draft } from '../../project';

/**
 * The pieces as DXF in millimetres, for a cutting machine or a drawing program; the writer is loaded when it is first
 * asked for.
 *
 * @param draft the finished draft; always full size
 * @param kind `2007`: one block a piece; `R12`: plain polylines for machines that read nothing newer
 */
export async function writeDxf(draft: Draft, kind: '2007' | 'R12' = '2007'): Promise<string> {
  return kind === 'R12' ? (await import('./r12')).writeDxfR12(draft) : (await import('./blocks')).writeDxf(draft);
}
