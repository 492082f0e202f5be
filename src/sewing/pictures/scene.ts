import type { PieceKind } from '../../edges';

/** What a step's picture shows, as data; the picture itself is drawn from the garment when it is looked at. */
export type Scene =
  | { readonly view: 'cloth' | 'pieces' | 'marks' | 'sample' | 'folds' | 'inseams' | 'legInLeg' | 'finished' }
  | { readonly view: 'rawEdges' }
  | { readonly view: 'forkTip' }
  | { readonly view: 'pocket'; readonly stage: 'facing' | 'sides' | 'placed' }
  | { readonly view: 'openings'; readonly at: 'waist' | 'hem' }
  | { readonly view: 'strip'; readonly piece: PieceKind; readonly stage: 'ends' | 'folded' }
  | { readonly view: 'facing'; readonly piece: PieceKind; readonly stage: 'ring' | 'on' }
  | { readonly view: 'quarters'; readonly holds: 'elastic' | 'band' }
  | { readonly view: 'waist'; readonly stage: WaistStage }
  | { readonly view: 'hem'; readonly stage: HemStage };

/** The waist: elastic sewn to the raw edge; turned over and stitched; something drawn through; shut; a strip sewn on; a facing; gathered for a band. */
export type WaistStage =
  | 'elasticOn'
  | 'stitched'
  | 'threaded'
  | 'closed'
  | 'corded'
  | 'stripOn'
  | 'bandUp'
  | 'faced'
  | 'gathered';

/** The hem: stitched flat before the inseam; turned up and stitched in the round; drawn through; a band; a facing; gathered for a cuff. */
export type HemStage = 'flat' | 'stitched' | 'threaded' | 'corded' | 'stripOn' | 'faced' | 'gathered';
