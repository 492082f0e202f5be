import { drawingInk, type Ink, inkBounds, uprightPlaces, type Wanted } from '../../drawing';
import type { Box } from '../../plane';
import type { Draft } from '../../project';
import { number, own, Refusal, say, words } from '../../words';
import { type NestedDrawing, nestedDrawing } from './drawing';
import { nestedPieces } from './pieces';
import { MOST_NESTED } from './styles';
import { nestedWords } from './words';

/** Several bodies on one drawing, in the order in which they are numbered; the first one's paper and units count. */
export type Nest = readonly [Draft, ...Draft[]];

/** What a nest is called: by its projects' one name, or by the first one's and how many more there are. */
export function nestTitle(nest: Nest): string {
  const [{ project }, ...others] = nest;
  const same = others.every((draft) => draft.project.name === project.name);
  return same
    ? words`${own(project.name)}, ${number(nest.length)} bodies`
    : words`${own(project.name)} and ${number(others.length)} more`;
}

/**
 * A nest of these drafts.
 *
 * @throws Refusal where there are too few or too many bodies for one drawing
 */
export function nestOf(drafts: readonly Draft[]): Nest {
  const [first, ...others] = drafts;
  if (first && others.length > 0 && drafts.length <= MOST_NESTED) return [first, ...others];
  const phrase =
    drafts.length < 2
      ? say`a nested drawing needs two projects or more`
      : say`at most ${number(MOST_NESTED)} bodies can be told apart on one drawing; these are ${number(drafts.length)}`;
  throw new Refusal([{ field: '--files', value: 'nested', phrase }]);
}

/** The nest's pieces beside each other, every grainline as it was drafted, their ink, and the least box round it. */
export function nestSideBySide(
  nest: Nest,
  of: 'printed' | 'pieces',
): NestedDrawing & { readonly box: Box; readonly ink: Ink; readonly wanted: Wanted } {
  const pieces = nestedPieces(nest, of);
  const places = uprightPlaces(pieces.map(({ whole }) => whole));
  const drawing = nestedDrawing(pieces, places);
  const ink = drawingInk(drawing.drawings);
  const [{ project }] = nest;
  const wanted = nestedWords(pieces, places, { project, scale: of === 'printed' ? project.paper.scale : 1 });
  return { ...drawing, box: inkBounds(ink), ink, wanted };
}
