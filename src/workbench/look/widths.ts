/**
 * Where the path shrinks to its stops, as the style sheets have it. In em, so that larger letters get the arrangement that
 * has room for them; a low screen, such as a phone on its side or a page at 200 %, counts as a narrow one.
 */
export const STOPS_ONLY = '(50em <= width < 75em) and (height >= 36em)';
