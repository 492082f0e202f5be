import type { RefObject } from 'react';

interface FileInputProps {
  /** Clicked by the button that asks for a file: it looks like the others, which a file field can't. */
  readonly opener: RefObject<HTMLInputElement | null>;
  /** For who is told what it is and not shown. */
  readonly label: string;
  readonly accept: string;
  readonly multiple?: boolean;
  readonly onFiles: (files: readonly File[]) => void;
}

/** An unseen field that asks for files; the same file may be chosen again after it was mended. */
export function FileInput({ opener, label, accept, multiple = false, onFiles }: FileInputProps) {
  return (
    <input
      ref={opener}
      type="file"
      accept={accept}
      multiple={multiple}
      className="unseen"
      tabIndex={-1}
      aria-label={label}
      onChange={({ currentTarget }) => {
        const files = [...(currentTarget.files ?? [])];
        currentTarget.value = '';
        if (files.length > 0) onFiles(files);
      }}
    />
  );
}
