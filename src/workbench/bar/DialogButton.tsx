import type { ButtonHTMLAttributes } from 'react';

interface DialogButtonProps extends ButtonHTMLAttributes<HTMLButtonElement> {
  /** Beside the look of every button of the bar. */
  readonly look?: string;
  readonly open: boolean;
  readonly onOpen: () => void;
  /** Loads the dialog before it is wanted. */
  readonly ahead: () => void;
}

/** A button of the bar that opens a dialog, which is loaded once somebody comes near it. */
export function DialogButton({ look, open, onOpen, ahead, ...rest }: DialogButtonProps) {
  return (
    <button
      type="button"
      className={look === undefined ? 'bar-button' : `bar-button ${look}`}
      aria-haspopup="dialog"
      aria-expanded={open}
      onPointerEnter={ahead}
      onFocus={ahead}
      onClick={onOpen}
      {...rest}
    />
  );
}
