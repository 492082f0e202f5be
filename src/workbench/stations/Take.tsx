import { type ReactNode, useRef } from 'react';
import { type FileKind, SINGLE_FILES } from '../../files';
import { type Phrase, said, say, words } from '../../words';
import { readProjects } from '../class/read-projects';
import { TakeClass } from '../class/TakeClass';
import { FileInput } from '../fields/FileInput';
import { isStale } from '../store/asked';
import { useBench } from '../store/bench';
import { TakeProgress } from '../take/TakeProgress';
import { take, useTaking } from '../take/taking';
import { ProjectorFields } from './ProjectorFields';

const FILES = [
  ...SINGLE_FILES,
  { kind: 'zip', name: say`Everything, ZIP`, what: say`the project and all files above` },
] as const;

/** The pattern's files, to take away: made beside the screen, with their progress, until they are stopped. */
export function Take() {
  const stale = useBench(isStale);
  const busy = useTaking((state) => state.busy);
  const others = useRef<HTMLInputElement>(null);

  const button = (kind: FileKind, name: Phrase, what: Phrase, onClick: () => void) => (
    <TakeButton
      key={kind}
      main={kind === 'pdf'}
      name={said(name)}
      what={said(what)}
      disabled={stale || busy !== undefined}
      onClick={onClick}
    >
      {busy?.kind === kind && <TakeProgress {...busy} onStop={() => useTaking.getState().stop()} />}
    </TakeButton>
  );

  return (
    <>
      <div className="take">
        {FILES.map(({ kind, name, what }) => button(kind, name, what, () => take(kind)))}
        {button('nested', say`Several bodies on one drawing`, say`choose up to eleven more project files`, () =>
          others.current?.click(),
        )}
        <FileInput
          opener={others}
          label={words`Project files to lay on this one`}
          accept=".json,application/json"
          multiple
          onFiles={async (files) => {
            const more = await readProjects(files);
            if (more && more.length > 0) take('nested', more);
          }}
        />
        <TakeClass />
        {stale && (
          <p className="field-help">{words`First put right what is asked for: a pattern is only taken from a good draft.`}</p>
        )}
      </div>
      <ProjectorFields />
    </>
  );
}

interface TakeButtonProps {
  readonly main: boolean;
  readonly name: string;
  readonly what: string;
  readonly disabled: boolean;
  readonly onClick: () => void;
  readonly children: ReactNode;
}

function TakeButton({ main, name, what, disabled, onClick, children }: TakeButtonProps) {
  return (
    <div className="take-one">
      <button type="button" className={main ? 'button button-main' : 'button'} disabled={disabled} onClick={onClick}>
        <span className="take-name">{name}</span>
        <span className="take-what">{what}</span>
      </button>
      {children}
    </div>
  );
}
