import { say, words } from '../../words';
import { Group } from '../fields/Group';
import { SwitchField } from '../fields/SwitchField';
import { useBench } from '../store/bench';
import { AllCautions } from './Cautions';
import { AskedFirst } from './paper/AskedFirst';
import { FilesFor } from './paper/FilesFor';
import { PictureKey } from './sew/PictureKey';
import { SewingList } from './sew/SewingList';
import { StepWords } from './sew/StepWords';

const MACHINES = [
  { key: 'plain', name: say`plain machine` },
  { key: 'serger', name: say`overlocker too` },
];

/** The order of work for these choices, a step at a time; its picture lies on the table. */
export default function SewStation() {
  const machine = useBench((state) => state.project.sewing.machine);
  const choose = useBench((state) => state.choose);
  return (
    <>
      <StepWords />
      <PictureKey />
      <SwitchField
        path="sewing.machine"
        choices={MACHINES}
        chosen={machine}
        help={say`A plain machine with zigzag sews everything; an overlocker finishes edges, and seams of knit, in one go.`}
        onPick={(key) => choose('sewing.machine', key)}
      />
      <SewingList />
      <Group name={words`To take along`}>
        <AskedFirst />
        <FilesFor use="sewing" />
      </Group>
      <AllCautions />
    </>
  );
}
