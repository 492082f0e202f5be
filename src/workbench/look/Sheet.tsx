import { Dialog } from 'radix-ui';
import { type ReactNode, useState } from 'react';

export interface SheetProps {
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
 * A sheet laid over the bench: focus stays in it, Escape and a press beside it put it away, and the focus goes back to
 * where it was. The library's own overlay would write styles that the page's policy forbids, so the shade is ours.
 */
export function Sheet({ title, about, onClose, wide = false, whole = false, children }: SheetProps) {
  const [opener] = useState(() => document.activeElement);
  return (
    <Dialog.Root open onOpenChange={(open) => !open && onClose()}>
      <Dialog.Portal>
        <div className="sheet-shade" data-whole={whole || undefined}>
          <Dialog.Content
            className={wide ? 'sheet sheet-wide' : 'sheet'}
            onCloseAutoFocus={(event) => {
              event.preventDefault();
              // Unless what was pressed on the sheet has led on to somewhere else.
              if (opener instanceof HTMLElement && document.activeElement === document.body) opener.focus();
            }}
          >
            <div className="sheet-head">
              <Dialog.Title className="sheet-title">{title}</Dialog.Title>
              <Dialog.Close className="plain-link">close</Dialog.Close>
            </div>
            <Dialog.Description className="field-help">{about}</Dialog.Description>
            {children}
          </Dialog.Content>
        </div>
      </Dialog.Portal>
    </Dialog.Root>
  );
}
