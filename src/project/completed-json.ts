/**
 * A JSON text that ends in the middle, closed after the last value that is whole: what an interrupted copy leaves.
 *
 * @param text text that JSON.parse refuses
 * @returns text that it takes, or undefined where the text is broken in another way
 */
export function completedJson(text: string): string | undefined {
  const open: string[] = [];
  let inText = false;
  // The last place after which the text may be cut, and what must be closed there.
  let whole: { readonly end: number; readonly closing: string } | undefined;
  const mark = (end: number) => {
    whole = { end, closing: [...open].reverse().join('') };
  };
  for (let i = 0; i < text.length; i += 1) {
    const sign = text[i] as string;
    if (inText) {
      if (sign === '\\') i += 1;
      else if (sign === '"') inText = false;
    } else if (sign === '"') inText = true;
    else if (sign === '{' || sign === '[') {
      open.push(sign === '{' ? '}' : ']');
      mark(i + 1);
    } else if (sign === '}' || sign === ']') {
      if (open.pop() !== sign) return undefined;
      mark(i + 1);
    } else if (sign === ',') mark(i);
  }
  if (!whole || open.length === 0) return undefined;
  const completed = text.slice(0, whole.end) + whole.closing;
  try {
    JSON.parse(completed);
    return completed;
  } catch {
    return undefined;
  }
}
