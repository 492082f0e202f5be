import { type Phrase, say } from '../../words';

export interface KeyTold {
  readonly key: Phrase;
  readonly what: Phrase;
}

/** The keys, by where they are answered; those of show mode are told by show mode itself. */
export const KEYS: readonly { readonly where: Phrase; readonly keys: readonly KeyTold[] }[] = [
  {
    where: say`Everywhere`,
    keys: [
      { key: say`?`, what: say`this help` },
      { key: say`Ctrl + Z`, what: say`undo` },
      { key: say`Ctrl + Shift + Z`, what: say`redo` },
      { key: say`Ctrl + S`, what: say`save the project as a file` },
      { key: say`Ctrl + P`, what: say`print a summary, not to scale` },
    ],
  },
  {
    where: say`On the drawing`,
    keys: [
      { key: say`arrows`, what: say`move the paper` },
      { key: say`+ −`, what: say`nearer, farther` },
      { key: say`F`, what: say`the whole drawing` },
    ],
  },
  {
    where: say`On a yellow button`,
    keys: [{ key: say`arrows`, what: say`move it, and the line with it` }],
  },
  {
    where: say`In a field`,
    keys: [{ key: say`↑ ↓`, what: say`a step more, a step less` }],
  },
];
