interface ShortenedProps {
  readonly whole: string;
  /** The same where there is little room: a part of the whole, which those who listen hear everywhere. */
  readonly short: string;
}

/** The words of a button that are seen shorter on a narrow screen. */
export const Shortened = ({ whole, short }: ShortenedProps) => (
  <>
    <span className="in-whole">{whole}</span>
    <span className="in-short" aria-hidden="true">
      {short}
    </span>
  </>
);
