import type { ReactNode } from 'react';
import { words } from '../../words';
import { download } from '../save/download';
import { rawText } from '../shelf/raw-text';

export interface KeptRowProps {
  readonly name: string;
  readonly about: string;
  readonly children: ReactNode;
}

/** One thing that is kept, and what can be done with it. */
export function KeptRow({ name, about, children }: KeptRowProps) {
  return (
    <li className="kept-row">
      <span className="kept-name">
        {name}
        <span className="field-help">{about}</span>
      </span>
      <span className="kept-actions">{children}</span>
    </li>
  );
}

interface NamedButtonProps {
  /** For those who listen: with what it is done to. */
  readonly name: string;
  readonly onPress: () => void;
  readonly children: ReactNode;
}

/** What can be done with one thing of a list, whose name stands beside it. */
export const NamedButton = ({ name, onPress, children }: NamedButtonProps) => (
  <button type="button" className="plain-link" aria-label={name} onClick={onPress}>
    {children}
  </button>
);

export interface RawRowProps {
  readonly name: string;
  readonly about: string;
  readonly raw: unknown;
  readonly onRemove: () => void;
}

/** One thing that can't be read here: it may still be of use to somebody who can. */
export function RawRow({ name, about, raw, onRemove }: RawRowProps) {
  return (
    <KeptRow name={name} about={about}>
      <button
        type="button"
        className="plain-link"
        onClick={() => download(rawText(raw), 'application/json', 'unread.legwork.json')}
      >
        {words`save what is there`}
      </button>
      <button type="button" className="plain-link" onClick={onRemove}>
        {words`remove`}
      </button>
    </KeptRow>
  );
}
