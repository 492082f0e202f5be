import type { Template } from './catalogue';

/**
 * What is called otherwise across the Atlantic, in the United States and in Canada, word by word. Pants are underwear in
 * Britain, and a vest or a tick means something else again: so neither word can serve both.
 *
 * @source practice
 */
export const WORDS: Readonly<Record<string, string>> = {
  trousers: 'pants',
  trouser: 'pants',
  nappy: 'diaper',
  nappies: 'diapers',
  overlock: 'serge',
  overlocks: 'serges',
  overlocked: 'serged',
  overlocking: 'serging',
  overlocker: 'serger',
  overlockers: 'sergers',
  tack: 'baste',
  tacked: 'basted',
  tacking: 'basting',
  reel: 'spool',
  reels: 'spools',
  nightwear: 'sleepwear',
  tick: 'check',
  ticked: 'checked',
  round: 'around',
  towards: 'toward',
  inwards: 'inward',
  outwards: 'outward',
};

/** What the United States alone spell otherwise: Canada says serger and writes centre. */
export const SPELLINGS: Readonly<Record<string, string>> = {
  centre: 'center',
  centres: 'centers',
  centred: 'centered',
  metre: 'meter',
  metres: 'meters',
  centimetre: 'centimeter',
  centimetres: 'centimeters',
  millimetre: 'millimeter',
  millimetres: 'millimeters',
  colour: 'color',
  colours: 'colors',
  coloured: 'colored',
  grey: 'gray',
  fibre: 'fiber',
  fibres: 'fibers',
  labelled: 'labeled',
  licence: 'license',
  licences: 'licenses',
  neighbour: 'neighbor',
  neighbours: 'neighbors',
  pyjama: 'pajama',
  pyjamas: 'pajamas',
  selvedge: 'selvage',
  selvedges: 'selvages',
};

/** Messages that word by word would not read right, as both say them; they are spelled as in Britain here. */
export const SENTENCES: Readonly<Partial<Record<Template, string>>> = {
  'Rubbed out: {0}.': 'Erased: {0}.',
  'rub out': 'erase',
  // What says which words there are to choose from keeps both.
  'British: trousers, overlocker. American: pants, serger. The page loads again, and your work is kept.':
    'British: trousers, overlocker. American: pants, serger. The page loads again, and your work is kept.',
  'british (trousers, overlocker), american (pants, serger) or canadian; otherwise as is said\nwhere your system says that you live':
    'british (trousers, overlocker), american (pants, serger) or canadian; otherwise as is said\nwhere your system says that you live',
};
