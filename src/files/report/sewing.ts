import { type Draft, sewingOf, shoppingOf } from '../../project';
import { cautionSource, type SewingPart, sewingMinutes, stepMinutes } from '../../sewing';
import { printPhrase, say } from '../../words';
import { bothUnits } from '../content/rows';

/** One thing to buy, in words; the amount in the project's unit and in the other one. */
export interface ReportItem {
  readonly id: string;
  readonly name: string;
  readonly howMuch: string;
  readonly note: string;
}

/** One caution, with its source and the fields of the project that raised it. */
export interface ReportCaution {
  readonly id: string;
  readonly title: string;
  readonly sentence: string;
  readonly source: string;
  readonly raisedBy: readonly string[];
}

/** The order of work; minutes are estimates from practice. */
export interface ReportSewing {
  readonly minutes: number;
  readonly firstPairMinutes: number;
  readonly steps: readonly {
    readonly id: string;
    readonly part: SewingPart;
    readonly title: string;
    readonly tasks: readonly string[];
    readonly settings: readonly string[];
    readonly check: string;
    readonly minutes: number;
  }[];
}

export const reportShopping = (draft: Draft): readonly ReportItem[] =>
  shoppingOf(draft).map(({ id, name, howMuch, note }) => ({
    id,
    name: printPhrase(name, draft.project.units),
    howMuch: bothUnits(howMuch, draft.project.units),
    note: printPhrase(note, draft.project.units),
  }));

export const reportCautions = ({ cautions, project }: Draft): readonly ReportCaution[] =>
  cautions.map((caution) => ({
    id: caution.id,
    title: printPhrase(caution.title, project.units),
    sentence: printPhrase(caution.sentence, project.units),
    source: printPhrase(cautionSource(caution), project.units),
    raisedBy: caution.raisedBy,
  }));

export function reportSewing(draft: Draft): ReportSewing {
  const { units } = draft.project;
  const steps = sewingOf(draft);
  const { usual, first } = sewingMinutes(steps);
  return {
    minutes: Math.round(usual),
    firstPairMinutes: Math.round(first),
    steps: steps.map((step) => ({
      id: step.id,
      part: step.part,
      title: printPhrase(step.title, units),
      tasks: step.tasks.map((task) => printPhrase(task, units)),
      settings: step.settings.map(({ name, value }) => printPhrase(say`${name}: ${value}`, units)),
      check: printPhrase(step.check, units),
      minutes: Math.round(stepMinutes(step)),
    })),
  };
}
