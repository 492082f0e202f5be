import type { Project } from '../../../project';
import { correctionTold, projectorCorrection, projectorRemarks, projectorTest } from '../../../sheets';
import { mm, printPhrase, say, words } from '../../../words';
import { PickField } from '../../fields/PickField';
import { QuantityField } from '../../fields/QuantityField';
import { useBench } from '../../store/bench';
import { sentence } from '../../store/refusal';
import { barMeasured, thickness } from './exact-lengths';
import { FilesFor } from './FilesFor';

const GROUNDS = [
  { key: 'dark', name: say`light on dark` },
  { key: 'light', name: say`dark on light` },
];

/** How the projector's file is drawn, and what was measured of its test. */
export function ProjectorFields() {
  const ground = useBench((state) => state.project.projector.ground);
  const choose = useBench((state) => state.choose);
  return (
    <>
      <QuantityField path="projector.line" quantity={thickness} help={say`Thicker where the room is bright.`} />
      <PickField
        path="projector.ground"
        choices={GROUNDS}
        chosen={ground}
        help={say`Light lines show the cloth between them.`}
        onPick={(key) => choose('projector.ground', key)}
      />
      <ProjectorTest />
    </>
  );
}

/** The test to project, and what its lines measured on the table: what is left empty corrects nothing. */
function ProjectorTest() {
  const projector = useBench((state) => state.draft.project.projector);
  const units = useBench((state) => state.project.units);
  const choose = useBench((state) => state.choose);
  const { across, down, diagonal } = projectorTest(projector.test, units);
  const sizes = (['large', 'small'] as const).map((key) => {
    const { across: wide, down: high } = projectorTest(key, units);
    return { key, name: say`${mm(wide)} by ${mm(high)}` };
  });
  const lines = [
    ['projector.across', across],
    ['projector.down', down],
    ['projector.diagonalAC', diagonal],
    ['projector.diagonalBD', diagonal],
  ] as const;
  return (
    <>
      <p className="field-help">
        {words`Set the projector square to the table and project the test. Then type what its lines measure there; a line left empty corrects nothing.`}
      </p>
      <PickField
        path="projector.test"
        choices={sizes}
        chosen={projector.test}
        help={say`As large as your projector can show.`}
        onPick={(key) => choose('projector.test', key)}
      />
      <FilesFor use="setting" />
      {lines.map(([path, line]) => (
        <QuantityField
          key={path}
          path={path}
          quantity={barMeasured(line)}
          optional
          help={say`True if it measures ${mm(line)}.`}
        />
      ))}
      <Correction projector={projector} units={units} />
    </>
  );
}

/** What the lengths come to: how the projector is corrected, or why they can't be right. */
function Correction({ projector, units }: Pick<Project, 'projector' | 'units'>) {
  const result = projectorCorrection(projector, units);
  const correction = result.ok ? result.value : undefined;
  return (
    <div role="status">
      {correction && <p className="field-help">{printPhrase(correctionTold(correction), units)}</p>}
      {correction &&
        projectorRemarks(correction).map((remark) => (
          <p key={remark.template} className="field-doubt">
            <strong>{words`Doubtful`}</strong> {printPhrase(remark, units)}
          </p>
        ))}
      {!result.ok &&
        result.problems.map(({ field, phrase }) => (
          <p key={field} className="field-problem">
            {sentence(printPhrase(phrase, units))}
          </p>
        ))}
    </div>
  );
}
