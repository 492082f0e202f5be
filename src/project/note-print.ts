import { placedDrawings } from '../drawing';
import { printedSheets } from '../sheets';
import type { Draft } from './draft-types';
import { withoutLastPrint } from './last-print';
import { sheetsOf } from './sheets';
import type { LastPrint, Print, Project } from './types';

/**
 * The project with its print noted. A sample is no pattern: it changes nothing of what was printed.
 *
 * @param draft what is on the paper now
 * @param date when; its day counts
 */
export function withLastPrint(draft: Draft, date: Date): Project {
  const { project, printed } = draft;
  if (project.paper.scale !== 1) return project;
  const sheets = sheetsOf(draft);
  const print: Print = {
    on: dayOf(date),
    ...printedSheets(sheets, placedDrawings(printed, sheets.places)),
    project: withoutLastPrint(project),
  };
  const last = project.lastPrint && onePrint(project.lastPrint);
  // Printed once more as it was, it is the same paper: what came before stays what was before it.
  const before = last && sameSheets(last, print) ? project.lastPrint?.before : last;
  return { ...project, lastPrint: before ? { ...print, before } : print };
}

const dayOf = (date: Date): string =>
  [date.getFullYear(), date.getMonth() + 1, date.getDate()].map((part) => String(part).padStart(2, '0')).join('-');

function onePrint(last: LastPrint): Print {
  const { before: _earlier, ...print } = last;
  return print;
}

const sameSheets = (one: Print, other: Print): boolean => sheetsText(one) === sheetsText(other);

const sheetsText = ({ on: _on, project: _project, ...sheets }: Print): string => JSON.stringify(sheets);
