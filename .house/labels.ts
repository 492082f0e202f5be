import type { Gathered } from './gather-words';

/** What stands above the first room: it is written by hand. */
const INTRODUCTION = /^[\s\S]*?(?=^## )/m;
/** A label has so many words at most, and no full stop. */
const LABEL_WORDS = 6;

/**
 * `docs/labels.md`: every message with where it comes from, room by room.
 *
 * @param before the text as it is, whose introduction stays
 * @param rooms the messages of each room
 * @param origins where each message comes from, by its template
 */
export function labelsText(
  before: string,
  rooms: ReadonlyMap<string, readonly Gathered[]>,
  origins: Readonly<Record<string, string>>,
): string {
  const introduction = INTRODUCTION.exec(before)?.[0];
  if (introduction === undefined) throw new Error('The list of labels has lost its introduction, or its first room.');
  return introduction + [...rooms].map(([room, its]) => roomText(room, its, origins)).join('\n');
}

function roomText(room: string, its: readonly Gathered[], origins: Readonly<Record<string, string>>): string {
  const table = (head: string, all: readonly Gathered[]): string => {
    const rows = new Set(all.map(({ template }) => `| ${shown(template)} | ${origins[template]} |\n`));
    return rows.size === 0 ? '' : `\n| ${head} | from |\n| --- | --- |\n${[...rows].join('')}`;
  };
  const labels = its.filter(isLabel);
  const sentences = its.filter((one) => !isLabel(one));
  return `## ${room.replace('-', ', ')}\n${table('label', labels)}${table('sentence', sentences)}`;
}

const isLabel = ({ template }: Gathered): boolean =>
  template.trim().split(/\s+/).length <= LABEL_WORDS && !/\.(\s|$)/.test(template);

/** As it stands in a cell of a table: values as “…”, and the signs that would mark something there as signs. */
const shown = (template: string): string =>
  template
    .replace(/(\{\d+\})+/g, '…')
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/[|*_<]/g, '\\$&');
