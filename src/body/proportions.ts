/**
 * The share of the inside leg that lies between crotch and knee: 1 − knee height ÷ crotch height.
 *
 * @source ANSUR II, 2014, medians 0.573 (women) and 0.577 (men)
 */
export const KNEE_BELOW_CROTCH = 0.427;
