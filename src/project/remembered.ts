/** What a costly question about a draft is answered: found when it is first asked, and remembered as long as there is that draft. */
export function remembered<Asked extends object, Answer>(find: (asked: Asked) => Answer): (asked: Asked) => Answer {
  const known = new WeakMap<Asked, { readonly answer: Answer }>();
  return (asked) => {
    const found = known.get(asked) ?? { answer: find(asked) };
    known.set(asked, found);
    return found.answer;
  };
}
