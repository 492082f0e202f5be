import { useMemo, useRef } from 'react';
import type { Homography, Point } from '../../plane';
import { inWindow, type Mark } from './board';
import { PhotoView } from './PhotoView';
import { shotAt, usePhoto } from './photo-store';
import type { Picture } from './picture';

const AS_IT_IS: Homography = [1, 0, 0, 0, 1, 0, 0, 0, 1];

/** The photograph as it is, with the rectangle's corners and the fifth length. */
export function CornerBoard({ picture }: { readonly picture: Picture }) {
  const shot = usePhoto((state) => state.work.shots[shotAt(state)]);
  const index = usePhoto(shotAt);
  const selected = usePhoto((state) => state.selected);
  const middle = useRef<Point>({ x: 0, y: 0 });
  const box = useMemo(() => ({ left: 0, top: 0, right: picture.width, bottom: picture.height }), [picture]);
  if (!shot) return null;
  const where = ({ x, y }: Point) => `${Math.round(x)} across, ${Math.round(y)} down`;
  const marks: readonly Mark[] = [
    ...shot.corners.map((at, i): Mark => {
      const letter = 'ABCD'.charAt(i);
      return { id: { kind: 'corner', index: i }, at, letter, name: `Corner ${letter}, ${where(at)}` };
    }),
    ...(shot.check?.ends ?? []).map((at, i): Mark => {
      const letter = 'EF'.charAt(i);
      return { id: { kind: 'check', index: i }, at, letter, name: `End ${letter} of the fifth length, ${where(at)}` };
    }),
  ];
  return (
    <PhotoView
      picture={picture}
      toPicture={AS_IT_IS}
      board={`picture ${index}`}
      box={box}
      about="The photograph."
      marks={marks}
      selected={selected}
      step={1}
      onMiddle={(at) => {
        middle.current = at;
      }}
      lines={(view) => {
        const text = (points: readonly Point[]) =>
          points
            .map((p) => inWindow(p, view))
            .map(({ x, y }) => `${x} ${y}`)
            .join('L');
        return (
          <>
            <path className="photo-rectangle" d={`M${text(shot.corners)}Z`} />
            {shot.check && <path className="photo-check" d={`M${text(shot.check.ends)}`} />}
          </>
        );
      }}
    />
  );
}
