import { LAYERS, type Layer } from '../../drawing';
import { type Phrase, say } from '../../words';

/** A layer of a file, which can be switched off, or cut alone, where the file is opened. */
export interface FileLayer {
  /** By which programs find it: it stays as it is, whatever language people read. */
  readonly id: string;
  /** What a list of layers shows. */
  readonly name: Phrase;
}

/**
 * Each layer of a drawing: its name in SVG and PDF and its number in a cutting file. Which lines lie on it is said by `drawing`.
 *
 * The numbers are those of the open standard for garment pieces in DXF (ASTM D6673, ANSI/AAMA-292), as others quote it: the
 * standard itself was not at hand, so these files use its numbers and claim no conformity. It names layers by number alone,
 * and all lines inside a piece that are neither cut nor sewn are one layer there.
 */
const OF_DRAWING = {
  levels: { name: say`Levels and side`, number: '8' },
  folds: { name: say`Folds`, number: '8' },
  stitch: { name: say`Stitching`, number: '14' },
  cut: { name: say`Cut line`, number: '1' },
  notches: { name: say`Notches`, number: '4' },
  grain: { name: say`Grainline`, number: '7' },
  text: { name: say`Words`, number: '15' },
} as const satisfies Readonly<Record<Layer, Omit<DrawingLayer, 'id'>>>;

/** What a cutting file calls a layer. */
export type LayerNumber = (typeof OF_DRAWING)[Layer]['number'];

/** A layer of a drawing, and what a cutting file calls it. */
interface DrawingLayer extends FileLayer {
  readonly id: Layer;
  readonly number: string;
}

/** Under the drawing: the projector’s squares. */
const UNDER: readonly FileLayer[] = [{ id: 'grid', name: say`Grid` }];
/** Over the drawing: what belongs to the paper. */
const OVER: readonly FileLayer[] = [
  { id: 'joins', name: say`Joins and sheet labels` },
  { id: 'notes', name: say`Notes and test squares` },
];

/** The layers of a drawing, from the bottom up: the same in every file of it. */
export const DRAWING_LAYERS: readonly DrawingLayer[] = LAYERS.map((id) => ({ id, ...OF_DRAWING[id] }));

/** By which number a cutting file has a layer of the drawing. */
export const layerNumber = (layer: Layer): LayerNumber => OF_DRAWING[layer].number;

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
export const WORDS_LAYER: FileLayer = { id: 'text', name: OF_DRAWING.text.name };
