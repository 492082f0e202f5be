/** The draft that is shown and the one before it, or beside it. */
const LAST = 2;

/** What a costly question about a draft is answered, found when it is first asked and remembered for the drafts that were asked of last. */
export function remembered<Asked, Answer>(find: (asked: Asked) => Answer): (asked: Asked) => Answer {
  let known: readonly { readonly asked: Asked; readonly answer: Answer }[] = [];
  return (asked) => {
    const before = known.find((one) => one.asked === asked);
    if (before) return before.answer;
    const found = { asked, answer: find(asked) };
    known = [found, ...known].slice(0, LAST);
    return found.answer;
  };
}
