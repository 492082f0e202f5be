/** A template with its values put in, each in the place of its number: `{0}`, `{1}`, … */
export const filled = (template: string, texts: readonly string[]): string =>
  template.replace(/\{(\d+)\}/g, (_, index) => texts[Number(index)] ?? '');
