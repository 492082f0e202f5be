import type { Draft } from '../../project';
import { number, own, say } from '../../words';
import { type FileLayer, WORDS_LAYER } from '../content/layers';

/** The layer of one body's lines, of which body counted from 0, or of what all have in common. */
export const bodyLayer = (body: number | undefined): string => (body === undefined ? 'common' : `body-${body + 1}`);

/** The layers of a nest, from the bottom up: what is common, each body, so that it can be printed or cut alone, words and key. */
export const nestLayers = (drafts: readonly Draft[]): readonly FileLayer[] => [
  { id: bodyLayer(undefined), name: say`Common to all` },
  ...drafts.map(({ project }, body) => ({
    id: bodyLayer(body),
    name: say`${number(body + 1)}: ${own(project.body.label)}`,
  })),
  WORDS_LAYER,
  { id: 'key', name: say`Key` },
];
