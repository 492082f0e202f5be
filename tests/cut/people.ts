import type { Project } from '../../src/project';
import { childBodies } from '../outside/children';
import { surveyBodies } from '../outside/survey';

/** One measured person, as drafted for the table of the cut. */
export interface Person {
  readonly id: string;
  readonly body: Project['body'];
  /** How deep the body is at the seat, where the survey has it. */
  readonly seatDepth?: number;
}

/** People who are drafted alike, and what of them the draft is told. */
export interface Group {
  readonly name: string;
  readonly people: readonly Person[];
}

/**
 * The people of the two open surveys in four groups: adults (ANSUR II, NATICK/TR-15/007, 2014) without a measured crotch
 * length, with it, and with its front part too; and the children (UM-HSRI-77-17, 1977) whose gluteal furrow was taken,
 * for the crotch of the others would be a guess upon a guess. Nobody took a child's crotch length.
 */
export function groups(): readonly Group[] {
  const adults = surveyBodies();
  const told = (change: (body: Project['body'], front: number | undefined) => Project['body']): readonly Person[] =>
    adults.map(({ id, sex, body, seatDepth, frontCrotchLength }) => ({
      id: `${id} (${sex})`,
      body: change(body, frontCrotchLength),
      ...(seatDepth === undefined ? {} : { seatDepth }),
    }));
  const children = childBodies().filter(({ furrowTaken }) => furrowTaken !== false);
  return [
    { name: 'adults', people: told(({ crotchLength: _, ...body }) => body) },
    { name: 'adults, crotch length', people: told((body) => body) },
    {
      name: 'adults, crotch length and its front part',
      people: told((body, front) => (front === undefined ? body : { ...body, frontCrotchLength: front })),
    },
    { name: 'children', people: children.map(({ id, body }) => ({ id, body })) },
  ];
}
