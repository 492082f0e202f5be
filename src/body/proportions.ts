/** The share of the inside leg that lies between crotch and knee: 1 − knee height ÷ crotch height, survey mean 0.573. */
export const KNEE_BELOW_CROTCH = 0.427;
