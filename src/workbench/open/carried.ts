import { type Phrase, say } from '../../words';

/** What is carried over the page, as far as a browser tells before it is let go. */
export type Carried = 'project' | 'drawing' | 'photograph' | 'table' | 'file';

/** Where each would go. */
export const DESTINATIONS: Readonly<Record<Carried, Phrase>> = {
  project: say`Let go to open the project; the one on the table is kept, and listed under Projects.`,
  drawing: say`Let go to bring the blocks of this drawing to the station Blocks.`,
  photograph: say`Let go to mark the blocks in this photograph, for the station Blocks.`,
  table: say`Let go to open the class with this table.`,
  file: say`Let go to open it: a project, a drawing or a photograph of blocks, or the table of a class.`,
};

/** What a field that asks for a drawing of blocks takes. */
export const DRAWINGS = '.svg,image/svg+xml,.dxf,image/vnd.dxf';

/** Tables as the systems call them: where a spreadsheet is installed, its own name stands for every CSV file. */
const TABLES = ['text/csv', 'text/tab-separated-values', 'application/vnd.ms-excel'];

/** @param type the file's media type; some systems know none, and tell it only when the file is let go */
export function carriedOf(type: string): Carried {
  if (type === 'application/json') return 'project';
  if (type === 'image/svg+xml' || type === 'image/vnd.dxf') return 'drawing';
  if (type.startsWith('image/')) return 'photograph';
  return TABLES.includes(type) ? 'table' : 'file';
}

/** Whether a file is a table of bodies, by its name or by what its system calls it. */
export const isTable = ({ name, type }: { readonly name: string; readonly type: string }): boolean =>
  /\.(csv|tsv)$/i.test(name) || TABLES.includes(type);
