/** What a PDF needs beside the draft. */
export interface PdfOptions {
  /** The print font (TrueType); it is embedded, cut down to the characters used. */
  readonly font: Uint8Array;
  /** Stands on the first sheet and in the document; the same date gives the same bytes. */
  readonly date: Date;
  /** The file's name as the first sheet says it; made from the project's name where it is left out. */
  readonly fileName?: string;
}
