/** Words of our own, first: who meets one looks for it here and nowhere else. */
const OURS: readonly (readonly [RegExp, string])[] = [
  [/\bstations?\b/i, 'ours: a station, a place of the work'],
  [/\bchalk lines?\b/i, 'ours: a chalk line, an outline that is kept'],
  [/\bchalkboard\b/i, 'ours: the chalkboard, light on dark for a class'],
  [/\byellow buttons?\b/i, 'ours: a yellow button, what is dragged on the drawing'],
  [/\bworking\b/i, 'ours: the working, the derivation that is shown'],
  [/\bhints?\b/i, 'ours: a hint, what to try first'],
  [/\bthe join\b/i, 'ours: the join, where the two blocks meet'],
  [/\bfinished measures?\b/i, 'ours: a finished measure, of the garment'],
  [/\bshow mode\b/i, 'ours: show mode, for a class'],
  [/\bverdicts?\b/i, 'ours: a verdict, good, doubtful or wrong'],
  [/\bLegwork\b/, 'ours: the name'],
];

const STANDARDS: readonly (readonly [RegExp, string])[] = [
  [/\bISO 8559-1\b/, 'standard: ISO 8559-1, measurements of the body'],
  [/\bEN 14682\b/, 'standard: EN 14682, cords on children’s clothes'],
  [/\bBS 5722\b/, 'standard: BS 5722, flammability of nightwear'],
  [/\bSVG\b|\bviewBox\b/, 'standard: SVG, W3C'],
  [/\bDXF\b/, 'standard: the DXF format'],
  [/\bPDF\b/, 'standard: PDF, ISO 32000'],
  [/\bZIP\b/, 'standard: the ZIP format'],
  [/\bCSV\b/, 'standard: CSV, RFC 4180'],
  [/\bJSON\b/, 'standard: JSON, RFC 8259'],
  [/\bUTF-8\b/, 'standard: UTF-8, RFC 3629'],
  [/\bJPEG\b/, 'standard: JPEG, ISO/IEC 10918, and PNG, ISO/IEC 15948'],
];

/** What is quoted: surveys, books, rules of a country. */
const SOURCES = /\bANSUR\b|\bAnthroKids\b|\bUM-HSRI\b|\bNHANES\b|Practical Designer|State University/;

/** Words that nobody uses who does not sew, draft or buy cloth; those with a second meaning are told by hand. */
const TRADE = new RegExp(
  String.raw`\b(?:${[
    'allowances?',
    'bands?',
    'blocks?',
    'body rise',
    'butt',
    'buttonholes?',
    'casings?',
    'centre (?:back|front|lines?|seams?)',
    'cloth',
    'contrast',
    'cords?',
    'crosswise',
    'crotch',
    'cuffs?',
    'cut lines?',
    'darts?',
    'drawstrings?',
    'ease',
    'elastics?',
    'eyelets?',
    'faced',
    'facings?',
    'fit sheets?',
    'flannel',
    'folds?',
    'folded',
    'forks?',
    'fullest (?:hip|part)',
    'fullness',
    'gather(?:s|ed)?',
    'grain(?:lines?)?',
    'hems?',
    'high hip',
    'hip (?:depth|levels?|lines?)',
    'inseams?',
    'inside leg',
    'interfacing',
    'knits?',
    'lap(?:ped)?',
    'lengthwise',
    'loopers?',
    'nap',
    'natural waist',
    'needles?',
    'notch(?:es)?',
    'outside leg',
    'overlock(?:ed)?',
    'pins?',
    'pockets?',
    'quarter marks?',
    'raw edges?',
    'reels?',
    'right sides? (?:out|together|up)',
    'rise',
    'selvedges?',
    'serge[rs]?',
    'sew(?:ing|n|s)?',
    'seams?',
    'spread',
    'stitch(?:ed|es|ing)?',
    'tacked',
    'the lay',
    'tension',
    'threads?',
    'tuck',
    'turnings?',
    'waist edge',
    'wovens?',
    'wrong sides?',
    'zigzag',
  ].join('|')})\b`,
  'i',
);

/**
 * Where a message comes from, as far as its words tell.
 *
 * @param template its template
 * @param told what is said of it by hand; undefined where it is new
 * @returns what was told, unless that is plain English and a word in it isn’t
 */
export function originOf(template: string, told: string | undefined): string {
  if (told !== undefined && told !== 'plain') return told;
  const words = template.replace(/\{\d+\}/g, ' ');
  const named = [...OURS, ...STANDARDS].find(([sign]) => sign.test(words));
  if (named) return named[1];
  if (SOURCES.test(words)) return 'source';
  return TRADE.test(words) ? 'trade' : 'plain';
}
