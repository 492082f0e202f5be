import * as v from 'valibot';
import type { TableRecords } from '../../files';

/** A table of bodies on the sheet: as it stands now, and as it was when it was opened. */
export interface ClassFile {
  readonly name: string;
  readonly records: TableRecords;
  readonly first: TableRecords;
}

const records = v.looseObject({
  records: v.array(v.array(v.string())),
  headsAt: v.pipe(v.number(), v.integer(), v.minValue(0)),
  delimiter: v.pipe(v.string(), v.length(1)),
  namesDelimiter: v.boolean(),
});
const classFile = v.looseObject({ name: v.string(), records, first: records });

/** Whether what was kept is a table that can be shown. */
export const isClassFile = (value: unknown): value is ClassFile => v.is(classFile, value);
