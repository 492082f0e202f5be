import fc from 'fast-check';
import type { Changes } from '../files/drafts';
import { between } from '../properties/seed';

/** A change of the example as people make one between two prints. */
export const change: fc.Arbitrary<Changes> = fc.oneof(
  between(15, 60).map((depth): Changes => ({ hem: { depth } })),
  fc.constant<Changes>({ hem: { finish: 'ribCuff' } }),
  between(10, 50).map((elasticWidth): Changes => ({ waist: { elasticWidth } })),
  fc.constant<Changes>({ waist: { finish: 'drawstringCasing' } }),
  between(0, 30).map((lowerCrotch): Changes => ({ leg: { lowerCrotch } })),
  between(-30, 30).map((raiseWaist): Changes => ({ leg: { raiseWaist } })),
  between(20, 30).map((spread): Changes => ({ leg: { spread } })),
  between(-30, 30).map((by): Changes => ({ body: { insideLeg: 760 + by } })),
  fc.constant<Changes>({ cloth: { piecedTip: 40 } }),
);
