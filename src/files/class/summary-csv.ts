import { measurements } from '../../body';
import { exactText, plain, type Units } from '../../length';
import type { MadeMember } from './member';
import { elasticLength } from './summary-content';
import { csvFile, measurementHead, measurementText } from './write-table';

/**
 * The summary as a table for a spreadsheet: the bodies as they were read, so that it can be read again, and what became
 * of each.
 */
export function writeSummaryCsv(members: readonly MadeMember[], units: Units): string {
  const unit = units === 'inch' ? 'in' : 'cm';
  const taken = measurements.filter(
    ({ key, required }) => required || members.some(({ figures }) => figures?.body[key] !== undefined),
  );
  const l = (value: number | undefined) => (value === undefined ? '' : exactText(value, units));
  return csvFile([
    [
      'Row',
      'Name',
      ...taken.map((m) => measurementHead(m, units)),
      `Finished hip (${unit})`,
      `Finished waist opening (${unit})`,
      `Finished inseam (${unit})`,
      `Finished hem (${unit})`,
      `Cloth to buy (${units === 'inch' ? 'yd' : 'm'})`,
      `Cloth, as bought, wide (${unit})`,
      `Elastic to cut (${unit})`,
      'Sheets',
      'Verdict',
      'Look at',
      'Doubtful',
    ],
    ...members.map(({ row, name, figures, needs, sheets, look, doubtful }) => {
      const cloth = needs.find(({ kind }) => kind === 'cloth');
      return [
        `${row}`,
        name,
        ...taken.map((m) => (figures ? measurementText(m, figures.body, units) : '')),
        l(figures?.hipFinished),
        l(figures?.waistOpening),
        l(figures?.inseam),
        l(figures?.hem),
        cloth?.length === undefined ? '' : plain(cloth.length / (units === 'inch' ? 914.4 : 1000), 3),
        l(cloth?.width),
        l(elasticLength(needs)),
        figures ? `${sheets}` : '',
        figures?.verdict ?? 'not made',
        look.join(' '),
        doubtful.join(', '),
      ];
    }),
  ]);
}
