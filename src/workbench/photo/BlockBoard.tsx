import { useMemo } from 'react';
import { curveMap, type Point } from '../../plane';
import { BLOCK_EDGES, edgeThroughMarks, LANDMARKS } from '../../trace';
import { number, said, words } from '../../words';
import { lineText, pathText } from '../table/path-text';
import { inWindow } from '../view/view';
import { boardOf, type Mark, onPicture } from './board';
import { flatsOfWork } from './flat';
import { NUDGE } from './MarkPad';
import { lookedAt } from './middle';
import { PhotoView } from './PhotoView';
import { nextLandmark, place, usePhoto } from './photo-store';
import type { Picture } from './picture';
import { marksOnFloor, shownFloor } from './shown-place';
import { EDGE_NAMES, LANDMARK_WORDS } from './words';
import type { Part } from './work';

/** The flattened paper, with the marks of one block and its edges as they are drawn through them. */
export function BlockBoard({ part, picture }: { readonly part: Part; readonly picture: Picture }) {
  const work = usePhoto((state) => state.work);
  const selected = usePhoto((state) => state.selected);
  const edge = usePhoto((state) => state.edge);
  const byKeys = usePhoto((state) => state.byKeys);
  const flat = flatsOfWork(work)[work[part].shot];
  const board = useMemo(() => flat && boardOf(flat), [flat]);
  const marks = useMemo(() => marksOnFloor(work, part), [work, part]);
  const floor = useMemo(
    () => flat && shownFloor({ work, selected, byKeys }, part, flat),
    [work, selected, byKeys, part, flat],
  );
  if (!board || !floor) return null;
  const shown: readonly Mark[] = [
    ...LANDMARKS.flatMap((name): Mark[] => {
      const at = marks.landmarks[name];
      return at ? [{ id: { kind: 'landmark', part, name }, at, name: said(LANDMARK_WORDS[name].name) }] : [];
    }),
    ...BLOCK_EDGES.flatMap((name) =>
      (marks.points[name] ?? []).map(
        (at, index): Mark => ({
          id: { kind: 'point', part, edge: name, index },
          at,
          name: words`${EDGE_NAMES[name]}, point ${number(index + 1, 0)}`,
          ...(at.corner && { letter: 'corner' }),
        }),
      ),
    ),
  ];
  const { grainTop, grainBottom, hipSide, hipCentre } = marks.landmarks;
  const onPress = (at: Point) => {
    const there = onPicture(picture, board, at);
    if (there) place(part, there);
  };
  return (
    <PhotoView
      picture={picture}
      board={board}
      name={`${part} ${work[part].shot} ${floor.name}`}
      box={floor.box}
      still
      about={
        part === 'front'
          ? words`The flattened picture; press on it to mark the front.`
          : words`The flattened picture; press on it to mark the back.`
      }
      marks={shown}
      selected={selected}
      step={NUDGE.paper}
      onPress={onPress}
      besideMarks={nextLandmark(work, part) !== undefined}
      onMiddle={(at) => {
        lookedAt.current = onPicture(picture, board, at);
      }}
      lines={(view) => {
        const levels = [
          [grainTop, grainBottom],
          [hipSide, hipCentre],
        ].map(([a, b]) => (a && b ? lineText([inWindow(a, view), inWindow(b, view)]) : ''));
        return (
          <>
            <path className="photo-level" d={levels.join('')} />
            {BLOCK_EDGES.map((name) => (
              <path
                key={name}
                className="photo-edge"
                data-lit={name === edge || undefined}
                d={pathText(
                  (edgeThroughMarks(marks, name) ?? []).map((curve) => curveMap(curve, (p) => inWindow(p, view))),
                )}
              />
            ))}
          </>
        );
      }}
    />
  );
}
