import { useRef } from 'react';
import { groupAnew } from '../../../project';
import { type BlockSource, NOTHING_MEASURED } from '../../../trace';
import { type Phrase, said, say, words } from '../../../words';
import { FileInput } from '../../fields/FileInput';
import { bring } from '../../open/bring';
import { DRAWINGS } from '../../open/carried';
import { openPhoto } from '../../photo/opened';
import { useBench } from '../../store/bench';

interface Road {
  readonly source: BlockSource;
  readonly name: Phrase;
  readonly what: Phrase;
  readonly take: () => void;
  readonly opensDialog?: boolean;
}

/** Where the blocks come from: drafted here or brought along, by one of four roads. Once a road was taken, the names of the others do. */
export function SourceChoice() {
  const file = useRef<HTMLInputElement>(null);
  const { choose, takeBlocks } = useBench.getState();
  const units = useBench((state) => state.project.units);
  const source = useBench((state) => state.project.block.source);
  const roads: readonly Road[] = [
    {
      source: 'drafted',
      name: say`Drafted from the body`,
      what: say`by its measurements`,
      take: () => source !== 'drafted' && choose('block', groupAnew('block', units)),
    },
    {
      source: 'photographed',
      name: say`From a photograph`,
      what: say`of blocks on paper: flattened, marked and drawn at true size`,
      take: () => openPhoto(),
      opensDialog: true,
    },
    {
      source: 'drawn',
      name: say`From a drawing`,
      what: say`SVG or DXF: by the names of its lines, or by their shapes`,
      take: () => file.current?.click(),
    },
    {
      source: 'numbers',
      name: say`By numbers`,
      what: say`what a tape measures on the paper of your block`,
      take: () =>
        source !== 'numbers' && takeBlocks(NOTHING_MEASURED, say`The numbers of your blocks go in here.`, false),
    },
  ];
  return (
    <fieldset className={source === 'drafted' ? 'group' : 'group roads'}>
      <legend>{words`Where the blocks come from`}</legend>
      {roads.map(({ source: road, name, what, take, opensDialog }) => (
        <button
          key={road}
          type="button"
          className="button"
          aria-current={road === source || undefined}
          aria-haspopup={opensDialog ? 'dialog' : undefined}
          onClick={take}
        >
          <span className="take-name">{said(name)}</span>
          {source === 'drafted' && <span className="take-what">{said(what)}</span>}
        </button>
      ))}
      <FileInput
        opener={file}
        label={words`Drawing of the blocks`}
        accept={DRAWINGS}
        onFiles={([drawing]) => drawing && bring(drawing)}
      />
    </fieldset>
  );
}
