import { useState } from 'react';
import type { Member } from '../../files';
import { formatLength } from '../../length';
import { inRow, number, own, type Phrase, say, words } from '../../words';
import { Switch } from '../fields/Switch';
import { Verdict } from '../finished/Verdict';
import { useBench } from '../store/bench';
import type { LookedThrough } from '../take/files-worker';

interface ClassRowsProps {
  readonly fileName: string;
  readonly looked: LookedThrough;
}

/** Shorter tables are seen at a glance. */
const FEW = 8;

/** The rows of a table with their verdicts, before anything is made of them. */
export function ClassRows({ fileName, looked: { members, unused, leftOut } }: ClassRowsProps) {
  const look = members.filter((member) => member.look.length > 0);
  const made = members.filter(({ figures }) => figures).length;
  const [only, setOnly] = useState<'all' | 'look'>('all');
  const shown = only === 'look' ? look : members;
  return (
    <div className="class-table">
      <h3 className="sheet-name">{fileName}</h3>
      <p role="status">{words`${counted(members.length)}: ${drawn(made, members.length)}; ${wanting(look.length)}`}</p>
      {unused.length > 0 && (
        <p className="field-help">{words`Columns not used: ${inRow(unused.map((one) => say`${own(one)}`))}.`}</p>
      )}
      {leftOut.length > 0 && (
        <p className="field-help">{words`Left out, because it belongs to one body: ${inRow(leftOut.map((one) => say`${own(one)}`))}.`}</p>
      )}
      {members.length > FEW && look.length > 0 && look.length < members.length && (
        <Switch
          label={words`Which rows are shown`}
          quiet
          choices={[
            { key: 'all', name: say`all rows` },
            { key: 'look', name: say`those to look at` },
          ]}
          chosen={only}
          onPick={(key) => setOnly(key === 'look' ? 'look' : 'all')}
        />
      )}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keys */}
      <section className="class-rows" tabIndex={0} aria-label={words`The rows of the table`}>
        <table>
          <thead>
            <tr>
              <th scope="col">{words`Row`}</th>
              <th scope="col">{words`Name`}</th>
              <th scope="col" className="class-spare">
                {words`Waist`}
              </th>
              <th scope="col">{words`Hip`}</th>
              <th scope="col" className="class-spare">
                {words`Inside leg`}
              </th>
              <th scope="col">{words`Verdict`}</th>
            </tr>
          </thead>
          <tbody>
            {shown.map((member) => (
              <MemberRow key={member.row} member={member} />
            ))}
          </tbody>
        </table>
      </section>
    </div>
  );
}

const counted = (rows: number): Phrase => (rows === 1 ? say`1 row` : say`${number(rows, 0)} rows`);

const drawn = (made: number, rows: number): Phrase =>
  made === rows ? say`all can be drafted` : say`${number(made, 0)} can be drafted, ${number(rows - made, 0)} can’t`;

function wanting(look: number): Phrase {
  if (look === 0) return say`none to look at.`;
  return look === 1 ? say`1 to look at.` : say`${number(look, 0)} to look at.`;
}

function MemberRow({ member: { row, name, figures, look, doubtful } }: { readonly member: Member }) {
  const units = useBench((state) => state.project.units);
  const l = (value: number | undefined) => (value === undefined ? '' : formatLength(value, units));
  const why = [
    ...look,
    ...(doubtful.length > 0 ? [words`Doubtful: ${inRow(doubtful.map((one) => say`${own(one)}`))}.`] : []),
  ];
  return (
    <>
      <tr className={why.length > 0 ? 'class-row class-row-told' : 'class-row'}>
        <td>{row}</td>
        <th scope="row">{name}</th>
        <td className="class-spare">{l(figures?.body.waistGirth)}</td>
        <td>{l(figures?.body.hipGirth)}</td>
        <td className="class-spare">{l(figures?.body.insideLeg)}</td>
        <td>
          {figures ? <Verdict verdict={figures.verdict} /> : <span className="class-unmade">{words`not made`}</span>}
        </td>
      </tr>
      {why.length > 0 && (
        <tr className={look.length > 0 ? 'class-why class-look' : 'class-why'}>
          <td />
          <td colSpan={5}>{why.join(' ')}</td>
        </tr>
      )}
    </>
  );
}
