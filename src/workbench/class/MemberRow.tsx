import { memo, useState } from 'react';
import type { Member } from '../../files';
import { formatLength } from '../../length';
import { inRow, number, own, say, words } from '../../words';
import { Verdict } from '../finished/Verdict';
import { useBench } from '../store/bench';
import { CellField } from './CellField';

/** A column of the table, as its cells are asked for. */
export interface Head {
  readonly text: string;
  /** Where the project file has what it holds; undefined where nothing is made of it. */
  readonly field: string | undefined;
  /** Whether that is a figure. */
  readonly figure: boolean;
}

export interface MemberRowProps {
  readonly member: Member;
  readonly heads: readonly Head[];
  /** Its cells as they stand, and as they were when the table was opened. */
  readonly cells: readonly string[];
  readonly first: readonly string[] | undefined;
}

/** One learner: figures and verdict, why to look, and the cells that want something, each to be typed where it stands. */
export const MemberRow = memo(function MemberRow({ member, heads, cells, first }: MemberRowProps) {
  const { row, name, figures, look, doubtful, fields } = member;
  const units = useBench((state) => state.project.units);
  const [open, setOpen] = useState(false);
  const [touched, setTouched] = useState<ReadonlySet<number>>(NONE);
  const l = (value: number | 'estimated' | undefined) => {
    if (value === undefined) return '';
    return value === 'estimated' ? words`estimated` : formatLength(value, units);
  };
  const why = [
    ...look,
    ...(doubtful.length > 0 ? [words`Doubtful: ${inRow(doubtful.map((one) => say`${own(one)}`))}.`] : []),
  ];
  const was = (i: number) => (first?.[i] ?? '').trim();
  const now = (i: number) => (cells[i] ?? '').trim();
  const wanting = heads.flatMap(({ field }, i) => (field !== undefined && fields.includes(field) ? [i] : []));
  // Where nobody can say which cell is wrong, such as in a row with too many, all of them are shown.
  const all = open || (!figures && wanting.length === 0);
  const shown = Array.from({ length: Math.max(heads.length, cells.length) }, (_, i) => i).filter(
    (i) =>
      (all && (heads[i]?.field !== undefined || i >= heads.length)) ||
      wanting.includes(i) ||
      touched.has(i) ||
      was(i) !== now(i),
  );
  return (
    <>
      <tr className={why.length > 0 || shown.length > 0 ? 'class-row class-row-told' : 'class-row'}>
        <td>{row}</td>
        <th scope="row">
          <button
            type="button"
            className="plain-link class-open"
            aria-expanded={all}
            onClick={() => setOpen(!open)}
            title={words`All cells of the row`}
          >
            {name}
          </button>
        </th>
        <td className="class-spare">{l(figures?.body.waistGirth)}</td>
        <td>{l(figures?.body.hipGirth)}</td>
        <td className="class-spare">{l(figures?.body.insideLeg)}</td>
        <td>
          {figures ? <Verdict verdict={figures.verdict} /> : <span className="class-unmade">{words`not made`}</span>}
        </td>
      </tr>
      {(why.length > 0 || shown.length > 0) && (
        <tr className={look.length > 0 ? 'class-why class-look' : 'class-why'}>
          <td />
          <td colSpan={5}>
            {why.join(' ')}
            {shown.length > 0 && (
              // What was shown once stays while the row does, so that the focus has its place.
              <fieldset
                className="class-cells"
                aria-label={words`Cells of ${own(name)}`}
                onFocus={() => setTouched(new Set([...touched, ...shown]))}
              >
                {shown.map((i) => (
                  <CellField
                    key={i}
                    at={row - 1}
                    cell={i}
                    head={heads[i]?.text || words`cell ${number(i + 1, 0)}`}
                    text={now(i)}
                    first={was(i)}
                    wanting={wanting.includes(i)}
                    figure={heads[i]?.figure ?? true}
                  />
                ))}
              </fieldset>
            )}
          </td>
        </tr>
      )}
    </>
  );
});

const NONE: ReadonlySet<number> = new Set();
