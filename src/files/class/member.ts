import type { Check, Verdict } from '../../check';
import { unprintedTold } from '../../drawing';
import { amountUp, type Mm } from '../../length';
import { checksOf, clothOf, type Draft, draft, notionsToBuy, type Project, sheetsOf } from '../../project';
import {
  inside,
  isSaid,
  own,
  type Problem,
  printPhrase,
  printProblem,
  type Result,
  said,
  say,
  UNSAID,
  words,
} from '../../words';
import { OTHER_CLOTHS } from '../content/cloth-rows';
import { type ColumnKind, nameOf } from './columns';
import type { ClassRow } from './read-class';

/** What people call each thing that is bought by its length. */
export const NEED_NAMES = {
  cloth: say`Cloth`,
  ...OTHER_CLOTHS,
  waistElastic: say`Waist elastic`,
  hemElastic: say`Hem elastic`,
  waistCord: say`Waist cord`,
  hemCord: say`Hem cord`,
} as const;
type NeedKind = keyof typeof NEED_NAMES;

/** A cloth, elastic or cord that one learner needs. */
export interface Need {
  readonly kind: NeedKind;
  readonly width: Mm;
  /** As a shop cuts cloth; elastic and cord as they are cut, all rows together; undefined where nothing of that width will do. */
  readonly length: Mm | undefined;
}

/** What a teacher asks for of one pattern. */
export interface MemberFigures {
  readonly body: Project['body'];
  readonly verdict: Verdict;
  readonly hipFinished: Mm;
  readonly waistOpening: Mm;
  readonly inseam: Mm;
  readonly hem: Mm;
}

/** One learner of a class, as the screen and the summary show them. */
export interface Member {
  readonly row: number;
  readonly name: string;
  /** Undefined where no pattern can be made; `look` says why. */
  readonly figures: MemberFigures | undefined;
  /** Why somebody should look before cutting: wrong checks, measurements that look like slips, what kept it from being made. */
  readonly look: readonly string[];
  /** Fields of the project file whose cells are missing, impossible or look like slips. */
  readonly fields: readonly string[];
  /** The names of the checks that are doubtful. */
  readonly doubtful: readonly string[];
}

/** The same once the pattern is made. */
export interface MadeMember extends Member {
  /** Empty where nothing was made. */
  readonly needs: readonly Need[];
  readonly sheets: number;
}

/** A refusal of the drafting, told of a row: by the column that its field came from, where there is one. */
const rowProblem = (problem: Problem): Problem =>
  problem.field.startsWith('body.')
    ? { ...problem, place: say`${own(nameOf(problem.field.slice(5) as ColumnKind))}` }
    : problem;

/** A row's draft: of its own reading, or why there is none, each problem told of the row, whose number stands beside it. */
export function rowDraft({ project }: ClassRow): Result<Draft> {
  if (!project.ok) return project;
  const drafted = draft(project.value);
  return drafted.ok ? drafted : { ok: false, problems: drafted.problems.map(rowProblem) };
}

/** A learner as far as the draft says; the cloth is not laid for it, which takes longer than all the rest. */
export function memberOf(row: ClassRow, drafted: Result<Draft>, units: Project['units']): Member {
  const { row: number, name } = row;
  if (!drafted.ok) {
    const look = drafted.problems.map((problem) => printProblem(problem, units));
    const fields = [...new Set(drafted.problems.map(({ field }) => field))];
    return { row: number, name, figures: undefined, look, fields, doubtful: [] };
  }
  const { body, measures, project } = drafted.value;
  const checks = checksOf(drafted.value);
  const of = (verdict: Verdict) => checks.filter((check) => check.verdict === verdict);
  const told = (check: Check) => printPhrase(say`${check.name}: ${check.reason}`, units);
  return {
    row: number,
    name,
    figures: {
      body: project.body,
      verdict: of('wrong').length > 0 ? 'wrong' : of('doubtful').length > 0 ? 'doubtful' : 'good',
      hipFinished: measures.hipGirthFinished,
      waistOpening: measures.waistOpening,
      inseam: measures.inseamFront,
      hem: measures.hemGirthFinished,
    },
    look: [
      ...of('wrong').map(told),
      ...[...body.remarks.map(({ phrase }) => phrase), unprintedTold(name) ?? UNSAID]
        .filter(isSaid)
        .map((phrase) => printPhrase(phrase, units)),
    ],
    fields: [...new Set(body.remarks.flatMap(({ keys }) => keys.map((key) => `body.${key}`)))],
    doubtful: of('doubtful').map(({ name: check }) => said(check)),
  };
}

/** The same with cloth, elastic and sheets. */
export function madeMember(row: ClassRow, made: Draft): MadeMember {
  const { units } = made.project;
  const needs = needsOf(made);
  const member = memberOf(row, { ok: true, value: made }, units);
  // Of the legs' own cloth a check says it already.
  const told = checksOf(made).some(({ id, verdict }) => id === 'leg-fits-cloth' && verdict === 'wrong');
  const none = needs
    .filter(({ kind, length }) => length === undefined && !(told && kind === 'cloth'))
    .map(({ kind }) => words`No ${inside(NEED_NAMES[kind])} of the chosen width is wide enough.`);
  return { ...member, look: [...member.look, ...none], needs, sheets: sheetsOf(made).sheets.length };
}

/** A learner for whom nothing was made. */
export const unmadeMember = (row: ClassRow, problems: readonly Problem[], units: Project['units']): MadeMember => ({
  ...memberOf(row, { ok: false, problems }, units),
  needs: [],
  sheets: 0,
});

/** What one pattern needs of what is bought by its length. */
function needsOf(made: Draft): readonly Need[] {
  const { waist, hem, units } = made.project;
  const { answer, others } = clothOf(made);
  const { elasticLength, hemElasticLength, cordLength, hemCordLength } = notionsToBuy(made);
  const cloth = (kind: NeedKind, of: typeof answer): Need => ({
    kind,
    width: of.fits ? of.lay.width : of.width,
    length: of.fits ? amountUp(of.lay.toBuy, units) : undefined,
  });
  const notion = (kind: NeedKind, width: Mm, length: Mm | undefined, count: number): readonly Need[] =>
    length === undefined ? [] : [{ kind, width, length: count * length }];
  return [
    cloth('cloth', answer),
    ...others.map((other) => cloth(other.kind, other.answer)),
    ...notion('waistElastic', waist.elasticWidth, elasticLength, waist.rows),
    ...notion('hemElastic', hem.elasticWidth, hemElasticLength, 2),
    ...notion('waistCord', waist.cordWidth, waist.cord === 'bought' ? cordLength : undefined, 1),
    ...notion('hemCord', hem.cordWidth, hem.cord === 'bought' ? hemCordLength : undefined, 2),
  ];
}

/** Whether somebody should look before this one is cut. */
export const needsLook = ({ look }: Member): boolean => look.length > 0;

/** What one sort of cloth, elastic or cord comes to for all learners together. */
export interface Total extends Omit<Need, 'length'> {
  readonly length: Mm;
  readonly learners: number;
}

/** The class's shopping, each sort by its width: sorts in the order in which they first occur, the narrower first. */
export function classTotals(members: readonly MadeMember[]): readonly Total[] {
  const totals = new Map<string, Total>();
  for (const { kind, width, length } of members.flatMap(({ needs }) => needs)) {
    if (length === undefined) continue;
    const key = `${kind} ${width}`;
    const before = totals.get(key);
    totals.set(key, {
      kind,
      width,
      length: (before?.length ?? 0) + length,
      learners: (before?.learners ?? 0) + 1,
    });
  }
  const all = [...totals.values()];
  const place = (one: Total) => all.findIndex(({ kind }) => kind === one.kind);
  return [...all].sort((a, b) => place(a) - place(b) || a.width - b.width);
}
