import { sheetsOf } from '../../project';
import { correctionRemarks, marginRemark, OWN_SIZE, PAPER_SIZES, printerTest } from '../../sheets';
import { mm, number, own, say, words } from '../../words';
import { Group } from '../fields/Group';
import { PickField } from '../fields/PickField';
import { QuantityField } from '../fields/QuantityField';
import { SwitchField } from '../fields/SwitchField';
import { useBench } from '../store/bench';
import { length } from '../store/quantity';
import { AskedFirst } from './paper/AskedFirst';
import { EdgeNumber } from './paper/EdgeNumber';
import { barMeasured } from './paper/exact-lengths';
import { Files } from './paper/Files';
import { FilesFor } from './paper/FilesFor';
import { PrintedBefore } from './paper/PrintedBefore';
import { PrintPattern } from './paper/PrintPattern';
import { SheetSavings } from './paper/SheetSavings';
import { UnprintedLetters } from './paper/UnprintedLetters';
import { useFewestSheets } from './use-fewest-sheets';

const PAPERS = [
  ...PAPER_SIZES.map(({ name }) => ({ key: name, name: say`${own(name)}` })),
  { key: OWN_SIZE, name: say`a size of your own` },
];

const ORIENTATIONS = [
  { key: 'auto', name: say`fewest sheets` },
  { key: 'portrait', name: say`portrait` },
  { key: 'landscape', name: say`landscape` },
];

const SCALES = [
  { key: '1', name: say`true size`, scale: 1 },
  { key: '1/2', name: say`half`, scale: 1 / 2 },
  { key: '1/3', name: say`a third`, scale: 1 / 3 },
  { key: '1/4', name: say`a quarter`, scale: 1 / 4 },
] as const;

const ALLOWANCES = [
  { key: 'scaled', name: say`scaled too` },
  { key: 'full', name: say`full width` },
];

/** The pattern to print, how it comes to paper, and the other files to take away. */
export default function PaperStation() {
  useFewestSheets();
  return (
    <>
      <UnprintedLetters />
      <PrintPattern />
      <PrintedBefore />
      <AskedFirst />
      <Sheets />
      <Group name={words`Size of the pattern`}>
        <Scale />
      </Group>
      <Group name={words`Your printer`}>
        <Correction />
      </Group>
      <Files />
    </>
  );
}

function Sheets() {
  const paper = useBench((state) => state.project.paper);
  const plan = useBench((state) => sheetsOf(state.draft));
  const choose = useBench((state) => state.choose);
  return (
    <>
      <PickField
        path="paper.sheet"
        choices={PAPERS}
        chosen={paper.sheet}
        help={say`${number(plan.sheets.length)} sheets in ${number(plan.columns)} columns and ${number(plan.rows)} rows; never fewer than ${number(plan.lowerBound)}.`}
        onPick={(key) => choose('paper.sheet', key)}
      />
      {paper.sheet === OWN_SIZE && (
        <>
          <QuantityField path="paper.ownWidth" quantity={length} help={say`One side of the sheet.`} />
          <QuantityField path="paper.ownHeight" quantity={length} help={say`The other side.`} />
        </>
      )}
      <PickField
        path="paper.orientation"
        choices={ORIENTATIONS}
        chosen={paper.orientation}
        help={say`How the sheets lie under the pieces.`}
        onPick={(key) => choose('paper.orientation', key)}
      />
      <QuantityField
        path="paper.margin"
        quantity={length}
        help={say`The border your printer can’t print; its test page shows how wide that is.`}
        doubt={marginRemark(paper)}
      />
      <QuantityField
        path="paper.overlap"
        quantity={length}
        help={say`How far one sheet lies under the next for gluing; 0 to butt and tape.`}
      />
      <SheetSavings />
    </>
  );
}

function Scale() {
  const { scale, allowances } = useBench((state) => state.project.paper);
  const choose = useBench((state) => state.choose);
  const chosen = SCALES.find((one) => Math.abs(one.scale - scale) < 1e-3)?.key ?? '';
  return (
    <>
      <SwitchField
        path="paper.scale"
        choices={SCALES}
        chosen={chosen}
        help={say`Smaller than true size is a sample for class; every sheet says so.`}
        onPick={(key) => choose('paper.scale', SCALES.find((one) => one.key === key)?.scale ?? 1)}
      />
      {scale !== 1 && (
        <SwitchField
          path="paper.allowances"
          choices={ALLOWANCES}
          chosen={allowances}
          help={say`Full width lets a sample be sewn like the real thing.`}
          onPick={(key) => choose('paper.allowances', key)}
        />
      )}
    </>
  );
}

function Correction() {
  const paper = useBench((state) => state.draft.project.paper);
  const units = useBench((state) => state.project.units);
  const { across, along } = printerTest(paper, units);
  const [remark] = correctionRemarks(paper);
  return (
    <>
      <p className="field-help">
        {words`Print the test page at 100 %, measure its two bars, and type what they measure.`}
      </p>
      <QuantityField
        path="paper.correctX"
        quantity={barMeasured(across)}
        help={say`True if it measures ${mm(across)}.`}
        doubt={remark}
      />
      <QuantityField
        path="paper.correctY"
        quantity={barMeasured(along)}
        help={say`True if it measures ${mm(along)}.`}
      />
      <EdgeNumber />
      <FilesFor use="printer" />
    </>
  );
}
