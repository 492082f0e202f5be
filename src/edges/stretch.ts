/** Of a knit's or a rib's measured stretch, the share that an edge keeps when it is sewn. @source practice */
export const USABLE_STRETCH = 0.7;

/** How many times its length a sewn edge of knit gives. @param stretch measured, a fraction of the relaxed length */
export const sewnStretch = (stretch: number): number => 1 + USABLE_STRETCH * stretch;
