import { LAYERS, type Layer } from '../../drawing';
import { type Phrase, say } from '../../words';

/** A layer of a file, which can be switched off, or cut alone, where the file is opened. */
export interface FileLayer {
  /** By which programs find it: it stays as it is, whatever language people read. */
  readonly id: string;
  /** What a list of layers shows. */
  readonly name: Phrase;
}

const NAMES: Readonly<Record<Layer, Phrase>> = {
  levels: say`Levels and side`,
  folds: say`Folds`,
  stitch: say`Stitching`,
  cut: say`Cut line`,
  marks: say`Notches and grain`,
  text: say`Words`,
};

/** Under the drawing: the projector’s squares. */
const UNDER: readonly FileLayer[] = [{ id: 'grid', name: say`Grid` }];
/** Over the drawing: what belongs to the paper. */
const OVER: readonly FileLayer[] = [
  { id: 'joins', name: say`Joins and sheet labels` },
  { id: 'notes', name: say`Notes and test squares` },
];

/** The layers of a drawing, from the bottom up: the same in every file of it. */
export const DRAWING_LAYERS: readonly FileLayer[] = LAYERS.map((id) => ({ id, name: NAMES[id] }));

/**
 * The layers of a file on paper or for a projector, from the bottom up, of which it has those on which something is drawn.
 *
 * @param drawn those of the drawing, where they are others
 */
export const layersWith = (drawn: readonly FileLayer[] = DRAWING_LAYERS): readonly FileLayer[] => [
  ...UNDER,
  ...drawn,
  ...OVER,
];

/** The drawing’s layer of words, which a nest has too. */
export const WORDS_LAYER: FileLayer = { id: 'text', name: NAMES.text };
