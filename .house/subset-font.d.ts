declare module 'subset-font' {
  /** Keeps only the glyphs that the text needs. */
  export default function subsetFont(
    font: Buffer,
    text: string,
    options: { targetFormat: 'truetype'; noHinting?: boolean; keepFeatures?: readonly string[] },
  ): Promise<Buffer>;
}
