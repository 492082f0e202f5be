import { useState } from 'react';
import type { Member } from '../../files';
import { formatLength } from '../../length';
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
  const rows = members.length === 1 ? '1 row' : `${members.length} rows`;
  return (
    <div className="class-table">
      <h3 className="sheet-name">{fileName}</h3>
      <p role="status">
        {rows}:{' '}
        {made === members.length ? 'all can be drafted' : `${made} can be drafted, ${members.length - made} can’t`}
        {look.length === 0
          ? '; nobody needs a look.'
          : `; ${look.length} ${look.length === 1 ? 'needs' : 'need'} a look.`}
      </p>
      {unused.length > 0 && <p className="field-help">Columns not used: {unused.join(', ')}.</p>}
      {leftOut.length > 0 && (
        <p className="field-help">Left out, because it belongs to one body: {leftOut.join(', ')}.</p>
      )}
      {members.length > FEW && look.length > 0 && look.length < members.length && (
        <Switch
          label="Which rows are shown"
          quiet
          choices={[
            { key: 'all', name: 'all rows' },
            { key: 'look', name: 'those to look at' },
          ]}
          chosen={only}
          onPick={(key) => setOnly(key === 'look' ? 'look' : 'all')}
        />
      )}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keys */}
      <section className="class-rows" tabIndex={0} aria-label="The rows of the table">
        <table>
          <thead>
            <tr>
              <th scope="col">Row</th>
              <th scope="col">Name</th>
              <th scope="col" className="class-spare">
                Waist
              </th>
              <th scope="col">Hip</th>
              <th scope="col" className="class-spare">
                Inside leg
              </th>
              <th scope="col">Verdict</th>
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

function MemberRow({ member: { row, name, figures, look, mind } }: { readonly member: Member }) {
  const units = useBench((state) => state.project.units);
  const l = (value: number | undefined) => (value === undefined ? '' : formatLength(value, units));
  const why = [...look, ...(mind.length > 0 ? [`Mind: ${mind.join(', ')}.`] : [])];
  return (
    <>
      <tr className={why.length > 0 ? 'class-row class-row-told' : 'class-row'}>
        <td>{row}</td>
        <th scope="row">{name}</th>
        <td className="class-spare">{l(figures?.body.waistGirth)}</td>
        <td>{l(figures?.body.hipGirth)}</td>
        <td className="class-spare">{l(figures?.body.insideLeg)}</td>
        <td>{figures ? <Verdict verdict={figures.verdict} /> : <span className="class-unmade">not made</span>}</td>
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
