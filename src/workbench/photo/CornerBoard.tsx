import { useMemo, useRef } from 'react';
import type { Point } from '../../plane';
import { number, own, say, words } from '../../words';
import { lineText, polygonText } from '../table/path-text';
import { inWindow } from '../view/view';
import { AS_IT_IS, type Mark } from './board';
import { PhotoView } from './PhotoView';
import { shotAt, usePhoto } from './photo-store';
import type { Picture } from './picture';

/** The photograph as it is, with the rectangle's corners and the fifth length. */
export function CornerBoard({ picture }: { readonly picture: Picture }) {
  const shot = usePhoto((state) => state.work.shots[shotAt(state)]);
  const index = usePhoto(shotAt);
  const selected = usePhoto((state) => state.selected);
  const middle = useRef<Point>({ x: 0, y: 0 });
  const box = useMemo(() => ({ left: 0, top: 0, right: picture.width, bottom: picture.height }), [picture]);
  if (!shot) return null;
  const where = ({ x, y }: Point) => say`${number(x, 0)} across, ${number(y, 0)} down`;
  const marks: readonly Mark[] = [
    ...(shot.rectangle === 'none' ? [] : shot.corners).map((at, i): Mark => {
      const letter = 'ABCD'.charAt(i);
      return { id: { kind: 'corner', index: i }, at, letter, name: words`Corner ${own(letter)}, ${where(at)}` };
    }),
    ...(shot.check?.ends ?? []).map((at, i): Mark => {
      const letter = 'EF'.charAt(i);
      return {
        id: { kind: 'check', index: i },
        at,
        letter,
        name: words`End ${own(letter)} of the fifth length, ${where(at)}`,
      };
    }),
    ...Object.entries(shot.joins ?? {}).map(
      ([key, at]): Mark => ({
        id: { kind: 'join', index: Number(key) },
        at,
        letter: key,
        name: words`Place ${own(key)} on two photographs, ${where(at)}`,
      }),
    ),
  ];
  return (
    <PhotoView
      picture={picture}
      board={AS_IT_IS}
      name={`picture ${index}`}
      box={box}
      about={words`The photograph.`}
      marks={marks}
      selected={selected}
      step={1}
      onMiddle={(at) => {
        middle.current = at;
      }}
      lines={(view) => {
        const seen = (points: readonly Point[]) => points.map((p) => inWindow(p, view));
        return (
          <>
            {shot.rectangle !== 'none' && <path className="photo-rectangle" d={polygonText(seen(shot.corners))} />}
            {shot.check && <path className="photo-check" d={lineText(seen(shot.check.ends))} />}
          </>
        );
      }}
    />
  );
}
