import { Dialog as Modal } from 'radix-ui';
import { type ReactNode, useState } from 'react';
import { words } from '../../words';

export interface DialogProps {
  readonly title: string;
  /** One sentence under the title. */
  readonly about: string;
  readonly onClose: () => void;
  /** For a table: as wide as the page lets it be. */
  readonly wide?: boolean;
  /** For a picture: it takes the whole window. */
  readonly whole?: boolean;
  readonly children: ReactNode;
}

/**
 * A dialog laid over the bench: focus stays in it, Escape and a press beside it put it away, and the focus goes back to
 * where it was. The library's own overlay would write styles that the page's policy forbids, so the shade is ours.
 */
export function Dialog({ title, about, onClose, wide = false, whole = false, children }: DialogProps) {
  const [opener] = useState(() => document.activeElement);
  return (
    <Modal.Root open onOpenChange={(open) => !open && onClose()}>
      <Modal.Portal>
        <div className="sheet-shade" data-whole={whole || undefined}>
          <Modal.Content
            className={wide ? 'sheet sheet-wide' : 'sheet'}
            onCloseAutoFocus={(event) => {
              event.preventDefault();
              // Unless what was pressed in it has led on to somewhere else.
              if (opener instanceof HTMLElement && document.activeElement === document.body) opener.focus();
            }}
          >
            <div className="sheet-head">
              <Modal.Title className="sheet-title">{title}</Modal.Title>
              <Modal.Close className="plain-link">{words`close`}</Modal.Close>
            </div>
            <Modal.Description className="field-help">{about}</Modal.Description>
            {children}
          </Modal.Content>
        </div>
      </Modal.Portal>
    </Modal.Root>
  );
}
