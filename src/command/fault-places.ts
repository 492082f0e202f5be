import { existsSync, readFileSync } from 'node:fs';
import { SourceMap } from 'node:module';
import { fileURLToPath } from 'node:url';

/** Where in the sources. */
const SOURCE = /\bsrc\/[\w/.-]+$/;
const FRAME = /(file:\/\/\S+?):(\d+):(\d+)/g;

/**
 * The places of the sources that a fault's stack names, innermost first, e.g. `src/command/run.ts:40`. A bundle's lines
 * are looked up in the map beside it, which is read only here.
 */
export function faultPlaces(stack: string): readonly string[] {
  return [...stack.matchAll(FRAME)].flatMap(([, file = '', line, column]) => {
    const place = sourceOf(file, Number(line), Number(column));
    return place === undefined ? [] : [place];
  });
}

function sourceOf(url: string, line: number, column: number): string | undefined {
  const own = SOURCE.exec(url)?.[0];
  if (own !== undefined) return `${own}:${line}`;
  const map = `${fileURLToPath(url)}.map`;
  if (!existsSync(map)) return undefined;
  const entry = new SourceMap(JSON.parse(readFileSync(map, 'utf8'))).findEntry(line - 1, column - 1);
  if (!('originalSource' in entry)) return undefined;
  const source = SOURCE.exec(entry.originalSource)?.[0];
  return source === undefined ? undefined : `${source}:${entry.originalLine + 1}`;
}
