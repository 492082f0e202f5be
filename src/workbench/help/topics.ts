import { type MeasurementKey, measurements } from '../../body';
import type { Check } from '../../check';
import type { WorkingStep } from '../../plane';
import {
  checksOf,
  type Draft,
  FIELDS_BY_PATH,
  fieldName,
  fieldSentence,
  STATION_NAMES,
  STATIONS,
  type Station,
  sewingOf,
} from '../../project';
import type { SewingStep } from '../../sewing';
import { inTurn, isSaid, type Phrase, say } from '../../words';
import { stationOf } from '../store/stations';
import { stepsInOrder } from '../store/working-at';

/** What a topic tells of: it finds its picture, and the place on the screen that it leads to. */
export type Subject =
  | { readonly kind: 'station'; readonly station: Station }
  | { readonly kind: 'measurement'; readonly key: MeasurementKey }
  | { readonly kind: 'check'; readonly check: Check }
  | { readonly kind: 'sewing'; readonly step: SewingStep }
  | { readonly kind: 'working'; readonly step: WorkingStep };

/** One thing that the help tells: in the sentences by which the screen says it. */
export interface Topic {
  readonly id: string;
  readonly title: Phrase;
  readonly sentences: readonly Phrase[];
  readonly subject: Subject;
}

/** What each kind of topic is called, in the order in which they are listed. */
export const TOPIC_KINDS: Readonly<Record<Subject['kind'], Phrase>> = {
  station: say`The stations, and what is set there`,
  measurement: say`How to measure`,
  check: say`What is checked`,
  sewing: say`How to sew it`,
  working: say`How it is drawn`,
};

const topic = (subject: Subject, key: string, title: Phrase, sentences: readonly Phrase[]): Topic => ({
  id: `${subject.kind}-${key}`,
  title,
  sentences: sentences.filter(isSaid),
  subject,
});

/**
 * Everything that the help can tell of a draft. It has no text of its own: stations tell what their fields move,
 * measurements where the tape goes, checks, steps of the sewing and of the working what they say of this draft.
 */
export const helpTopics = (draft: Draft): readonly Topic[] => [
  ...STATIONS.map((station) =>
    topic({ kind: 'station', station }, station, STATION_NAMES[station], fieldsTold(station)),
  ),
  ...measurements.map(({ key, name, definition, where }) =>
    topic({ kind: 'measurement', key }, key, name, [definition, where]),
  ),
  ...checksOf(draft).map((check) =>
    topic({ kind: 'check', check }, check.id, check.name, [check.reason, check.remedy]),
  ),
  ...sewingOf(draft).map((step) =>
    topic({ kind: 'sewing', step }, step.id, step.title, [...step.tasks, step.why, step.check, step.care]),
  ),
  ...stepsInOrder(draft).map((step) => topic({ kind: 'working', step }, step.id, step.sentence, [step.formula])),
];

/** What each field of a station moves. */
const fieldsTold = (station: Station): readonly Phrase[] =>
  [...FIELDS_BY_PATH.keys()]
    .filter((path) => stationOf(path) === station && isSaid(fieldSentence(path)))
    .map((path) => inTurn([fieldName(path), fieldSentence(path)], ': '));
