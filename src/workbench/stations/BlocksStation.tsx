import { useRef } from 'react';
import { groupAnew } from '../../project';
import { mm, say, words } from '../../words';
import { AutoField } from '../fields/AutoField';
import { FileInput } from '../fields/FileInput';
import { QuantityField } from '../fields/QuantityField';
import { bringBlocks } from '../open/bring-blocks';
import { openPhoto } from '../photo/opened';
import { isStale } from '../store/asked';
import { useBench } from '../store/bench';
import { length } from '../store/quantity';
import { take } from '../take/taking';

/** The fitted block: drafted from the body, or brought along. */
export default function BlocksStation() {
  const source = useBench((state) => state.project.block.source);
  return source === 'drafted' ? <DraftedBlocks /> : <BroughtBlocks />;
}

/** Nothing can be set on a block that somebody trusts already; only given up for a drafted one. */
function BroughtBlocks() {
  const choose = useBench((state) => state.choose);
  const units = useBench((state) => state.project.units);
  return (
    <>
      <p>{words`These blocks were brought along. They are used as they are.`}</p>
      <button type="button" className="button" onClick={() => choose('block', groupAnew('block', units))}>
        <span className="take-name">{words`Draft them from the body instead`}</span>
        <span className="take-what">{words`undo brings yours back`}</span>
      </button>
      <OwnBlocks />
    </>
  );
}

/** How much room the drafted block leaves, and how it is balanced. */
function DraftedBlocks() {
  const riseEase = useBench((state) => state.draft.blocks.riseEase);
  // What a nappy and the fit of a measured crotch length add is added to a choice by hand as well.
  const chosen = useBench((state) => state.draft.proportions?.riseEaseChosen ?? riseEase);
  return (
    <>
      <QuantityField
        path="block.hipEase"
        quantity={length}
        help={say`Room round the fullest part, before the leg is spread.`}
      />
      <QuantityField
        path="block.waistEase"
        quantity={length}
        help={say`Room round the waist of the block; darts take up the rest.`}
      />
      <AutoField
        path="block.riseEase"
        quantity={length}
        automatic={chosen}
        help={say`How far the crotch line lies below the seat; now ${mm(riseEase)}.`}
      />
      <QuantityField
        path="block.balance"
        quantity={length}
        help={say`How much wider each back is than the middle, and each front narrower.`}
      />
      <OwnBlocks />
    </>
  );
}

/** The ways in and out for blocks that fit already: a drawing at true size, each edge a line by its name, or a photograph. */
function OwnBlocks() {
  const file = useRef<HTMLInputElement>(null);
  const stale = useBench(isStale);
  return (
    <div className="take">
      <button type="button" className="button" onClick={() => file.current?.click()}>
        <span className="take-name">{words`Bring your own blocks`}</span>
        <span className="take-what">{words`an SVG drawing at true size, its lines called front-waist, front-centre …`}</span>
      </button>
      <button type="button" className="button" aria-haspopup="dialog" onClick={() => openPhoto()}>
        <span className="take-name">{words`From a photograph`}</span>
        <span className="take-what">{words`of blocks on paper: flattened, marked and drawn at true size`}</span>
      </button>
      <button type="button" className="button" disabled={stale} onClick={() => take('blocks')}>
        <span className="take-name">{words`Save these blocks`}</span>
        <span className="take-what">{words`as such a drawing, to print, correct and bring back`}</span>
      </button>
      <FileInput
        opener={file}
        label={words`Drawing of the blocks`}
        accept=".svg,image/svg+xml"
        onFiles={([drawing]) => drawing && void bringBlocks(drawing)}
      />
    </div>
  );
}
