import { measuredOf } from '../../body';
import { formatLength, type Mm } from '../../length';
import { point, straight } from '../../plane';
import { type Draft, measureTold } from '../../project';
import { inTurn, mm, own, printPhrase, say } from '../../words';
import type { Passage } from '../pen/passage';
import { lineNumber } from './numbers';
import { nestedStyle, numberStyle } from './styles';

const SAMPLE: Mm = 55;

/** What a nest's key says of one body. */
interface NestKeyRow {
  readonly body: number;
  readonly name: string;
  readonly says: string;
}

/** One row for each body: whose it is, the line type in words, and the measures by which it is known again. */
export function keyRows(drafts: readonly Draft[]): readonly NestKeyRow[] {
  return drafts.map((draft, body) => {
    const { project, measures } = draft;
    const l = (value: Mm) => formatLength(value, project.units);
    const { waistGirth, hipGirth, insideLeg } = measuredOf(project.body);
    const given = [
      [say`waist`, waistGirth],
      [say`hip`, hipGirth],
      [say`inside leg`, insideLeg],
    ] as const;
    const measured = given.flatMap(([name, value]) => (value === undefined ? [] : [say`${name} ${mm(value)}`]));
    const finished = say`finished: hip ${mm(measures.hipGirthFinished)}, inseam ${own(measureTold(draft, 'inseamFront', l))}, hem ${own(measureTold(draft, 'hemGirthFinished', l))}`;
    return {
      body,
      name: `${body + 1}  ${project.body.label} · ${project.name}`,
      says: printPhrase(inTurn([nestedStyle(body).name, inTurn(measured, ', '), finished], '; '), project.units),
    };
  });
}

/** The key: each body's line with its number on it, and what the row says beside it. */
export const nestKey = (drafts: readonly Draft[]): Passage => ({
  kind: 'key',
  width: SAMPLE,
  rows: keyRows(drafts).map(({ body, name, says }) => ({
    label: name,
    text: says,
    draw: (pen, left, middle) => {
      const { cut } = nestedStyle(body);
      pen.stroke([straight(point(left, middle), point(left + SAMPLE, middle))], (p) => p, cut);
      const { field, figures } = lineNumber(body + 1, point(left + SAMPLE / 2, middle), point(1, 0));
      pen.fill(field, (p) => p, '#FFFFFF');
      for (const figure of figures) pen.stroke(figure, (p) => p, numberStyle(body));
    },
  })),
});
