import { NEEDLES, TWIN_NEEDLE } from '../cloth';
import { type Phrase, say } from '../words';
import type { Garment } from './garment';
import type { Setting } from './step';

/** Machines count stitches in millimetres, wherever they stand; so these are no lengths of the pattern. @source practice */
export const setting = (name: Phrase, value: Phrase): Setting => ({ name, value });

type Wants = Pick<Garment, 'cloth' | 'machine'>;

/** The needle for the cloth. */
const needle = ({ cloth }: Wants): Setting => setting(say`Needle`, NEEDLES[cloth.kind]);

/** How tight the threads are, in words: machines number it each in its own way. */
const NORMAL = setting(say`Tension`, say`normal, the threads locked inside the cloth`);
const LOOSER = setting(say`Tension`, say`a little below normal, so that no thread breaks`);

/** A seam that bears pull: straight in woven, a narrow zigzag in knit, so that it gives. */
export function seamStitch(g: Wants): readonly Setting[] {
  if (sergesSeams(g)) {
    return [
      setting(say`Overlocker`, say`4 threads, stitch 2.5 mm long, seam 6 mm wide, differential feed 1.3 to 1.5`),
      setting(say`Needles`, say`${NEEDLES.knit}, both`),
      setting(say`Tension`, say`balanced, the loopers meeting on the edge`),
    ];
  }
  return g.cloth.kind === 'knit'
    ? [setting(say`Stitch`, say`narrow zigzag, 2.5 mm long, 0.5 to 1 mm wide`), needle(g), LOOSER]
    : [setting(say`Stitch`, say`straight, 2.5 mm long`), needle(g), NORMAL];
}

/** The second row of a seam that the serger sewed, on the plain machine. */
export const secondRow = (): Setting => setting(say`Second row`, say`narrow zigzag, 2.5 mm long, 0.5 to 1 mm wide`);

/** How raw edges are overlocked. */
export function edgeStitch(g: Wants): readonly Setting[] {
  return g.machine === 'serger'
    ? [
        setting(
          say`Edges`,
          g.cloth.kind === 'knit'
            ? say`overlocker, 4 threads as in the seams, stitch 2.5 mm long, differential feed 1.3 to 1.5`
            : say`overlocker, 3 threads, stitch 2.5 mm long, differential feed 1`,
        ),
      ]
    : [setting(say`Edges`, say`zigzag, 2 mm long, 5 mm wide, its right swing just off the edge`)];
}

/** Stitching that is seen: casings, hems, pockets. */
export function topStitch(g: Wants): readonly Setting[] {
  return g.cloth.kind === 'knit'
    ? [setting(say`Stitch`, say`${TWIN_NEEDLE}, 3 mm long; or a zigzag, 2.5 mm long, 2 mm wide`), needle(g), LOOSER]
    : [setting(say`Stitch`, say`straight, 3 mm long`), needle(g), NORMAL];
}

/** Stitching that turns corners or is only short: pockets, openings shut, rows across a casing. No twin needle goes there. */
export function barStitch(g: Wants): readonly Setting[] {
  return g.cloth.kind === 'knit'
    ? [setting(say`Stitch`, say`zigzag, 2.5 mm long, 2 mm wide`), needle(g), LOOSER]
    : topStitch(g);
}

/** Stitching that is seen and has to stretch with an elastic or a band beneath it. */
export function stretchedStitch(g: Wants): readonly Setting[] {
  if (g.cloth.kind === 'knit') return topStitch(g);
  return [
    setting(
      say`Stitch`,
      say`zigzag in three steps, or plain zigzag, 3 mm long, 2 mm wide; or straight, 4 mm long, the waist stretched as far as it goes`,
    ),
    needle(g),
    NORMAL,
  ];
}

/** How a knit's turning is stitched with a twin needle, and which of its rows lies on the line; nothing of other cloth. */
export function topStitchTold(g: Wants, row: 'nearFold' | 'upper'): readonly Phrase[] {
  if (g.cloth.kind !== 'knit') return [];
  return [
    row === 'upper'
      ? say`Stitch a knit’s hem from the right side, where a twin needle makes its two rows, the upper one at the measure given; your fingers feel the edge beneath. No twin needle? A zigzag stretches too.`
      : say`Stitch from the right side, where a twin needle makes its two rows, the one nearer the fold on the stitching line: chalk that there first, or let the fold run along the seam guide. No twin needle? A zigzag stretches too.`,
  ];
}

/** What people call an edge that is ready to be held down: folded under, or overlocked or zigzagged alone. */
export function edgeNamed({ machine }: Pick<Garment, 'machine'>, folded: boolean): Phrase {
  if (folded) return say`folded`;
  return machine === 'serger' ? say`overlocked` : say`zigzagged`;
}

/** Elastic under a zigzag that stretches with it. */
export const elasticStitch = (g: Wants): readonly Setting[] => [
  setting(say`Stitch`, say`zigzag in three steps, or plain zigzag, 3 mm long, 4 mm wide`),
  needle(g),
  NORMAL,
];

/** A buttonhole's own stitch. */
export const buttonholeStitch = (g: Wants): readonly Setting[] => [
  setting(say`Stitch`, say`buttonhole, 0.4 mm long; or an eyelet pressed in`),
  needle(g),
];

/** In knit the serger sews and finishes a seam in one go; in woven the seam is sewn first, because it bears pull. */
export const sergesSeams = ({ cloth, machine }: Wants): boolean => cloth.kind === 'knit' && machine === 'serger';
