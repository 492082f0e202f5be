import type { ReactNode } from 'react';
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
        save what is there
      </button>
      <button type="button" className="plain-link" onClick={onRemove}>
        remove
      </button>
    </KeptRow>
  );
}
