import type { Mm } from '../../length';

/** A rectangle to be laid on a page. */
export interface Parcel {
  readonly width: Mm;
  readonly height: Mm;
}

/** Where a parcel lies: on which page, from its upper left corner, and whether it lies turned by a quarter. */
export interface Packed {
  readonly page: number;
  readonly left: Mm;
  readonly top: Mm;
  readonly turned: boolean;
}

/** White room on a page. */
interface Free extends Parcel {
  readonly left: Mm;
  readonly top: Mm;
}

/**
 * Lays rectangles on as few pages of one size as a quick look finds, in their order: each into the white room that it
 * fits most closely, on the first page where there is any. Geometry: the white of a page as its largest rectangles,
 * which overlap.
 *
 * @param gap white between two
 * @param turn `seldom`: only where it does not fit as it is; `freely`: wherever that fits more closely. Either may take
 *   fewer pages.
 * @returns undefined where one is larger than the page
 */
export function packedPages(
  parcels: readonly Parcel[],
  page: Parcel,
  gap: Mm,
  turn: 'seldom' | 'freely',
): readonly Packed[] | undefined {
  const pages: (readonly Free[])[] = [];
  const packed: Packed[] = [];
  for (const { width, height } of parcels) {
    const grown = { width: width + gap, height: height + gap };
    const ways = [
      { ...grown, turned: false },
      { width: grown.height, height: grown.width, turned: true },
    ];
    const fresh: readonly Free[] = [{ left: 0, top: 0, width: page.width + gap, height: page.height + gap }];
    let found: { readonly at: number; readonly room: Free; readonly way: (typeof ways)[number] } | undefined;
    for (const [at, free] of [...pages, fresh].entries()) {
      const fitting = free.flatMap((room) =>
        ways.filter((way) => way.width <= room.width && way.height <= room.height).map((way) => ({ at, room, way })),
      );
      const asItIs = fitting.filter(({ way }) => !way.turned);
      const fits = turn === 'seldom' && asItIs.length > 0 ? asItIs : fitting;
      found = fits.reduce<typeof found>((best, one) => (best && slack(best) <= slack(one) ? best : one), undefined);
      if (found) break;
    }
    if (!found) return undefined;
    const { at, room, way } = found;
    const taken: Free = { left: room.left, top: room.top, width: way.width, height: way.height };
    pages[at] = whiteLeft(pages[at] ?? fresh, taken);
    packed.push({ page: at, left: room.left, top: room.top, turned: way.turned });
  }
  return packed;
}

const slack = ({ room, way }: { readonly room: Free; readonly way: Parcel }): Mm =>
  Math.min(room.width - way.width, room.height - way.height);

/** The largest white rectangles once one is taken. */
function whiteLeft(free: readonly Free[], taken: Free): readonly Free[] {
  const parts = free.flatMap((room): readonly Free[] => {
    const [right, bottom] = [room.left + room.width, room.top + room.height];
    const [takenRight, takenBottom] = [taken.left + taken.width, taken.top + taken.height];
    if (taken.left >= right || takenRight <= room.left || taken.top >= bottom || takenBottom <= room.top) return [room];
    return [
      { ...room, width: taken.left - room.left },
      { ...room, left: takenRight, width: right - takenRight },
      { ...room, height: taken.top - room.top },
      { ...room, top: takenBottom, height: bottom - takenBottom },
    ].filter(({ width, height }) => width > 0 && height > 0);
  });
  const holds = (a: Free, b: Free) =>
    a.left <= b.left && a.top <= b.top && a.left + a.width >= b.left + b.width && a.top + a.height >= b.top + b.height;
  return parts.filter(
    (part, i) => !parts.some((other, k) => k !== i && holds(other, part) && !(holds(part, other) && k > i)),
  );
}
