import { WAIST_FINISH_NAMES } from '../../../edges';
import { mm, number, say, words } from '../../../words';
import { AutoField } from '../../fields/AutoField';
import { Fold } from '../../fields/Fold';
import { PickField } from '../../fields/PickField';
import { QuantityField } from '../../fields/QuantityField';
import { SwitchField } from '../../fields/SwitchField';
import { useBench } from '../../store/bench';
import { length, percentage } from '../../store/quantity';
import { CordField } from './CordField';

const FINISHES = Object.entries(WAIST_FINISH_NAMES).map(([key, name]) => ({ key, name }));

const ELASTIC = [
  { key: 'threaded', name: say`threaded` },
  { key: 'sewnOn', name: say`sewn on` },
];

const RAW_EDGE = [
  { key: 'overlocked', name: say`overlocked or zigzagged` },
  { key: 'turnedUnder', name: say`turned under` },
];

const ROWS = [1, 2, 3, 4].map((rows) => ({
  key: String(rows),
  name: rows === 1 ? say`one row` : say`${number(rows, 0)} rows`,
}));

/** How the waist is finished, and what that finish asks: first its width, the rest folded away. */
export function WaistFields() {
  const { finish } = useBench((state) => state.project.waist);
  const { casingHeight } = useBench((state) => state.draft.measures);
  const { bandLength } = useBench((state) => state.draft.notions);
  const choose = useBench((state) => state.choose);
  const elastic = finish !== 'drawstringCasing' && finish !== 'knitBand';
  const cord = finish === 'drawstringCasing' || finish === 'elasticAndDrawstring';
  const folded = elastic || cord;
  return (
    <>
      <PickField
        path="waist.finish"
        choices={FINISHES}
        chosen={finish}
        help={
          finish === 'knitBand'
            ? say`${mm(bandLength ?? 0)} round: it holds, and it stretches over the fullest part.`
            : say`${mm(casingHeight)} for the casing, both layers together.`
        }
        onPick={(key) => choose('waist.finish', key)}
      />
      {elastic && <QuantityField path="waist.elasticWidth" quantity={length} help={say`Measured flat.`} />}
      {cord && (
        <QuantityField
          path="waist.cordWidth"
          quantity={length}
          help={say`It comes out at centre front, through the outer layer.`}
        />
      )}
      {finish === 'knitBand' && (
        <QuantityField path="waist.bandHeight" quantity={length} help={say`When it is folded.`} />
      )}
      <Fold
        name={words`More at the waist`}
        paths={[
          ...(elastic ? OF_ELASTIC : []),
          ...(cord ? OF_CORD : []),
          ...(finish === 'knitBand' ? ['waist.bandStretch'] : []),
          ...(folded ? ['waist.turnOfCloth'] : []),
          ...(finish === 'elasticCasing' ? ['waist.elastic'] : []),
          ...(folded && finish !== 'separateCasing' ? ['waist.rawEdge'] : []),
        ]}
      >
        {elastic && <Elastic />}
        {cord && <Cord />}
        {finish === 'knitBand' && (
          <QuantityField
            path="waist.bandStretch"
            quantity={percentage}
            help={say`Measured: how much longer the band’s knit gets.`}
          />
        )}
        {folded && (
          <QuantityField
            path="waist.turnOfCloth"
            quantity={length}
            help={say`What the fold itself takes up; more in a thick flannel.`}
          />
        )}
        {finish === 'elasticCasing' && <Threading />}
        {folded && finish !== 'separateCasing' && <RawEdge />}
      </Fold>
    </>
  );
}

const OF_ELASTIC = ['waist.elasticLength', 'waist.elasticStretch', 'waist.rows'];
const OF_CORD = ['waist.cordLength', 'waist.cord'];

function Cord() {
  const { cordLength } = useBench((state) => state.draft.notions);
  return (
    <>
      <AutoField
        path="waist.cordLength"
        quantity={length}
        automatic={cordLength ?? 0}
        help={say`Cut it ${mm(cordLength ?? 0)} long, with two ends to tie.`}
      />
      <CordField path="waist.cord" />
    </>
  );
}

function Elastic() {
  const { rows } = useBench((state) => state.project.waist);
  const { elasticLength } = useBench((state) => state.draft.notions);
  const choose = useBench((state) => state.choose);
  return (
    <>
      <AutoField
        path="waist.elasticLength"
        quantity={length}
        automatic={elasticLength ?? 0}
        help={
          rows > 1
            ? say`Cut it ${mm(elasticLength ?? 0)} long, ${number(rows, 0)} times.`
            : say`Cut it ${mm(elasticLength ?? 0)} long.`
        }
      />
      <QuantityField
        path="waist.elasticStretch"
        quantity={percentage}
        help={say`Measured: how much longer the elastic gets when it is pulled out.`}
      />
      <PickField
        path="waist.rows"
        choices={ROWS}
        chosen={String(rows)}
        help={say`Each in a channel of its own.`}
        onPick={(key) => choose('waist.rows', Number(key))}
      />
    </>
  );
}

function Threading() {
  const { elastic } = useBench((state) => state.project.waist);
  const choose = useBench((state) => state.choose);
  return (
    <SwitchField
      path="waist.elastic"
      choices={ELASTIC}
      chosen={elastic}
      help={
        elastic === 'threaded'
          ? say`Drawn through the finished casing.`
          : say`Sewn to the raw edge, then folded over with it.`
      }
      onPick={(key) => choose('waist.elastic', key)}
    />
  );
}

function RawEdge() {
  const { finish, elastic, rawEdge } = useBench((state) => state.project.waist);
  const { catch: caught } = useBench((state) => state.draft.measures);
  const choose = useBench((state) => state.choose);
  if (finish === 'elasticCasing' && elastic === 'sewnOn') return null;
  return (
    <SwitchField
      path="waist.rawEdge"
      choices={RAW_EDGE}
      chosen={rawEdge}
      help={say`${mm(caught)} more lie beyond the stitching, to be caught by it.`}
      onPick={(key) => choose('waist.rawEdge', key)}
    />
  );
}
