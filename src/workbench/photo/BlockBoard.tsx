import { useMemo } from 'react';
import { curveMap, type Point } from '../../plane';
import { BLOCK_EDGES, edgeThroughMarks, floorBox, LANDMARKS } from '../../trace';
import { number, said, words } from '../../words';
import { lineText, pathText } from '../table/path-text';
import { inWindow } from '../view/view';
import { boardOf, type Mark, onPicture } from './board';
import { flatsOfWork, marksOnPaper } from './flat';
import { NUDGE } from './MarkPad';
import { lookedAt } from './middle';
import { PhotoView } from './PhotoView';
import { place, usePhoto } from './photo-store';
import type { Picture } from './picture';
import { EDGE_NAMES, LANDMARK_WORDS } from './words';
import type { Part } from './work';

/** The flattened paper, with the marks of one block and its edges as they are drawn through them. */
export function BlockBoard({ part, picture }: { readonly part: Part; readonly picture: Picture }) {
  const work = usePhoto((state) => state.work);
  const selected = usePhoto((state) => state.selected);
  const edge = usePhoto((state) => state.edge);
  const flats = flatsOfWork(work);
  const flat = flats[work[part].shot];
  const board = useMemo(() => flat && boardOf(flat), [flat]);
  const box = useMemo(() => flat && floorBox(flat), [flat]);
  const marks = useMemo(() => {
    // Those on photographs of another floor have no place on this one.
    const ofPlane = flats.map((other) => (other?.joined === flat?.joined ? other : undefined));
    return marksOnPaper(work[part], ofPlane);
  }, [work, part, flats, flat]);
  if (!board || !box) return null;
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
      name={`${part} ${work[part].shot}`}
      box={box}
      about={
        part === 'front'
          ? words`The flattened picture; press on it to mark the front.`
          : words`The flattened picture; press on it to mark the back.`
      }
      marks={shown}
      selected={selected}
      step={NUDGE.paper}
      onPress={onPress}
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
