import { useRef } from 'react';
import type { Point } from '../../plane';
import { number, own, say, words } from '../../words';
import { lineText, polygonText } from '../table/path-text';
import { inWindow } from '../view/view';
import { AS_IT_IS, type Mark } from './board';
import { wrongFound } from './flat';
import { foundAt, WHOLE } from './found';
import { PhotoView } from './PhotoView';
import { shotAt, usePhoto } from './photo-store';
import type { Picture } from './picture';
import { hasRectangle, type MarkId, type Shot } from './work';

/** The photograph as it is, with the rectangle's corners and the fifth length. */
export function CornerBoard({ picture }: { readonly picture: Picture }) {
  const work = usePhoto((state) => state.work);
  const index = usePhoto(shotAt);
  const shot = work.shots[index];
  const selected = usePhoto((state) => state.selected);
  const middle = useRef<Point>({ x: 0, y: 0 });
  const box = () => ({ left: 0, top: 0, right: picture.width, bottom: picture.height });
  if (!shot) return null;
  const wrong = wrongFound(work, index);
  const where = ({ x, y }: Point) => say`${number(x, 0)} across, ${number(y, 0)} down`;
  const marks: readonly Mark[] = [
    ...(shot.found ?? []).flatMap(({ number: mark }) => foundMarks(shot, mark, selected)),
    ...(hasRectangle(shot) ? shot.corners : []).map((at, i): Mark => {
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
            {(shot.found ?? []).map((mark) => (
              <path
                key={mark.number}
                className="photo-found"
                data-wrong={wrong.includes(mark.number) || undefined}
                d={polygonText(seen(mark.corners))}
              />
            ))}
            {hasRectangle(shot) && <path className="photo-rectangle" d={polygonText(seen(shot.corners))} />}
            {shot.check && <path className="photo-check" d={lineText(seen(shot.check.ends))} />}
          </>
        );
      }}
    />
  );
}

/** A printed mark that was found, to take up as a whole; in hand, its corners are there to be set. */
function foundMarks({ found }: Shot, mark: number, selected: MarkId | undefined): readonly Mark[] {
  const inHand = selected?.kind === 'found' && selected.number === mark;
  return [WHOLE, ...(inHand ? [0, 1, 2, 3] : [])].flatMap((index): readonly Mark[] => {
    const id = { kind: 'found', number: mark, index } as const;
    const at = foundAt(found, id);
    if (!at) return [];
    if (index === WHOLE) return [{ id, at, letter: String(mark), name: words`Found mark ${number(mark, 0)}` }];
    return [{ id, at, name: words`Corner ${number(index + 1, 0)} of found mark ${number(mark, 0)}` }];
  });
}
