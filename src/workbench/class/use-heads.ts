import { useEffect, useMemo, useState } from 'react';
import { loadMending } from '../../files';
import { words } from '../../words';
import { withLate } from '../faults/late';
import type { ClassFile } from './class-file';
import type { Head } from './MemberRow';

/** The columns of a table and what each holds; undefined until the reader of tables is there. */
export function useHeads(table: ClassFile | undefined): readonly Head[] | undefined {
  const [mending, setMending] = useState<Awaited<ReturnType<typeof loadMending>>>();
  useEffect(() => withLate(words`The table of a class`, loadMending, (loaded) => setMending(() => loaded)), []);
  const heads = table?.records.records[table.records.headsAt];
  return useMemo(
    () =>
      mending &&
      heads?.map((head) => {
        const { text, column } = mending.tableHead(head);
        const figure = column !== undefined && mending.isMeasurement(column.kind);
        return { text, figure, field: column && mending.fieldOf(column.kind) };
      }),
    [mending, heads],
  );
}
