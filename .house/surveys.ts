// Reads the open surveys; their files lie beside the checkout, and are not part of it.
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const surveyFile = (name: string) => fileURLToPath(new URL(`../../shared/data/${name}`, import.meta.url));

/** ANSUR II (NATICK/TR-15/007, 2014): 6,068 adults. */
export const ADULTS = surveyFile('ansur2_pants.csv');
/** UM-HSRI-77-17 (1977): 3,899 children and youths. */
export const CHILDREN = surveyFile('anthrokids1977_pants.csv');

/** Whether both surveys lie beside this checkout. */
export const surveysAreHere = existsSync(ADULTS) && existsSync(CHILDREN);

/** An adult's crotch lies 0.013–0.024 of the stature above the gluteal furrow; the middle of it (inferred). */
export const CROTCH_ABOVE_FURROW = 0.018;

/** One row of a survey, by the names of its columns; empty where nobody measured. */
export type Person = Readonly<Record<string, string>>;
/** What is asked of a person; undefined where it was not measured. */
export type Column = (person: Person) => number | undefined;

export const column =
  (name: string): Column =>
  (person) =>
    person[name] ? Number(person[name]) : undefined;

/** One measurement less another. */
export const less =
  (from: Column, minus: Column): Column =>
  (person) => {
    const [a, b] = [from(person), minus(person)];
    return a === undefined || b === undefined ? undefined : a - b;
  };

export function people(file: string): readonly Person[] {
  const [head = '', ...lines] = readFileSync(file, 'utf8').trim().split('\n');
  const names = head.trim().split(',');
  return lines.map((line) => {
    const cells = line.trim().split(',');
    return Object.fromEntries(names.map((name, i) => [name, cells[i] ?? '']));
  });
}
