/** What style does to where a line lies and whether it is seen; colours and widths don't matter here. */
export interface StyleEffect {
  readonly hides: boolean;
  /** The declaration that moves or redraws it, which is not followed; undefined where there is none. */
  readonly moves: string | undefined;
}

/** A rule of a style sheet that hides or moves. */
export interface StyleRule extends StyleEffect {
  readonly selector: string;
}

/** What a rule is matched against. */
export interface Styled {
  readonly element: string;
  readonly id: string;
  readonly classes: readonly string[];
}

/** Properties that move or redraw what they are set on (CSS Transforms 1 and 2, Motion Path 1; SVG 2, chapter 9). */
const MOVING = /^(?:transform|translate|rotate|scale|zoom|offset(?:-\w+)?|d)$/;
/** Properties whose plain values do nothing. */
const NOTHING = /^(?:none|auto|normal|initial|unset|1)$/;
/** What is shown of a declaration. */
const LONGEST_SHOWN = 60;

/** The declarations of a style, names and values in small letters, the last of a name winning. */
export function declarationsOf(style: string): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const one of style.split(';')) {
    const colon = one.indexOf(':');
    if (colon < 0) continue;
    const value = one.slice(colon + 1).trim();
    found.set(one.slice(0, colon).trim().toLowerCase(), value.replace('!important', '').trim().toLowerCase());
  }
  return found;
}

/** What declarations do to a line. */
export function effectOf(declarations: ReadonlyMap<string, string>): StyleEffect {
  const hides =
    declarations.get('display') === 'none' || /^(?:hidden|collapse)$/.test(declarations.get('visibility') ?? '');
  const moving = [...declarations].find(([name, value]) => MOVING.test(name) && !NOTHING.test(value));
  return { hides, moves: moving && `${moving[0]}: ${moving[1]}`.slice(0, LONGEST_SHOWN) };
}

/**
 * The rules of a style sheet that hide or move something.
 *
 * @param css text of all style elements
 */
export function stylingRules(css: string): readonly StyleRule[] {
  return withoutComments(css)
    .split('}')
    .flatMap((rule): readonly StyleRule[] => {
      const brace = rule.lastIndexOf('{');
      if (brace < 0) return [];
      const effect = effectOf(declarationsOf(rule.slice(brace + 1)));
      if (!effect.hides && effect.moves === undefined) return [];
      const selectors = rule.slice(rule.lastIndexOf('{', brace - 1) + 1, brace).split(',');
      return selectors.map((selector) => ({ selector: selector.trim(), ...effect }));
    });
}

/** Cut at the marks: a pattern over all of it would look for the end of each comment again and again. */
function withoutComments(css: string): string {
  const [first = '', ...others] = css.split('/*');
  return [first, ...others.map((part) => part.split('*/').slice(1).join('*/'))].join(' ');
}

/**
 * What a rule does to an element. Elements, classes and names are matched; where a rule asks for more than that, it may
 * or may not hold, so that what it hides or moves is called moved, which nobody follows.
 */
export function ruleEffect({ selector, hides, moves }: StyleRule, { element, id, classes }: Styled): StyleEffect {
  const last =
    selector
      .slice(-LONGEST_SELECTOR)
      .split(/[\s>+~]+/)
      .at(-1) ?? '';
  const parts = /^(\*|[\w-]*)((?:[.#][\w-]+)*)$/.exec(last);
  const holds =
    !parts ||
    (['', '*', element].includes(parts[1] ?? '') &&
      (parts[2]?.match(/[.#][\w-]+/g) ?? []).every((one) =>
        one.startsWith('#') ? id === one.slice(1) : classes.includes(one.slice(1)),
      ));
  if (!holds) return { hides: false, moves: undefined };
  if (parts && last === selector) return { hides, moves };
  return { hides: false, moves: `${selector.slice(0, LONGEST_SHOWN)} { ${moves ?? 'display: none'} }` };
}

const LONGEST_SELECTOR = 200;
