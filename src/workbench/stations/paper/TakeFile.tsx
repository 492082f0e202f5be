import type { ReactNode } from 'react';
import type { FileKind } from '../../../files';
import { printPhrase } from '../../../words';
import { isStale } from '../../store/asked';
import { useBench } from '../../store/bench';
import { TakeProgress } from '../../take/TakeProgress';
import { take, useTaking } from '../../take/taking';
import { afterSaving } from './after-saving';

interface TakeFileProps {
  readonly kind: FileKind;
  readonly name: string;
  /** What it is for, in a sentence. */
  readonly what: string;
  readonly main?: boolean;
  readonly disabled?: boolean;
  /** What a press does, where there is something to choose first. */
  readonly onPress?: () => void;
}

/** One file to take away: what it is for, how far it has come while it is made, and what to do with it once it is saved. */
export function TakeFile({
  kind,
  name,
  what,
  main = false,
  disabled = false,
  onPress = () => take(kind),
}: TakeFileProps) {
  const stale = useBench(isStale);
  const busy = useTaking((state) => state.busy);
  const units = useBench((state) => state.project.units);
  const saved = useTaking((state) => (state.saved?.kind === kind ? state.saved.fileName : undefined));
  return (
    <TakeOne main={main} name={name} what={what} disabled={disabled || stale || busy !== undefined} onClick={onPress}>
      {busy?.kind === kind && <TakeProgress {...busy} onStop={() => useTaking.getState().stop()} />}
      <p className="take-saved" role="status">
        {saved !== undefined && printPhrase(afterSaving(kind, saved), units)}
      </p>
    </TakeOne>
  );
}

interface TakeOneProps {
  readonly main?: boolean;
  readonly name: string;
  readonly what: string;
  readonly disabled?: boolean;
  readonly onClick: () => void;
  readonly children?: ReactNode;
}

/** A button with what it is for, and below it what has become of it. */
export function TakeOne({ main = false, name, what, disabled = false, onClick, children }: TakeOneProps) {
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
