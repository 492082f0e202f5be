import { type Phrase, say } from '../../words';
import { NoStorage } from './database';

/** Why something is not kept: no room, no storage, or a fault of Legwork's own. */
export type Trouble = 'full' | 'off' | 'fault';

/** What browsers say of a storage that they refuse, have lost, or can't read from the disk. */
const NOT_THERE = [
  'AbortError',
  'InvalidStateError',
  'NotAllowedError',
  'NotFoundError',
  'NotReadableError',
  'SecurityError',
  'TimeoutError',
  'UnknownError',
  'VersionError',
];

/** Tells a storage that is full or not there from everything else that can go wrong while something is kept. */
export function troubleOf(fault: unknown): Trouble {
  if (fault instanceof NoStorage) return 'off';
  if (!(fault instanceof DOMException)) return 'fault';
  if (fault.name === 'QuotaExceededError') return 'full';
  return NOT_THERE.includes(fault.name) ? 'off' : 'fault';
}

/** One sentence for each, with what to do. */
export const TROUBLE_WORDS: Readonly<Record<Exclude<Trouble, 'fault'>, Phrase>> = {
  full: say`There is no room left on this computer: your work goes on, but save it as a file to keep it.`,
  off: say`This browser keeps nothing for Legwork: your work goes on, but save it as a file to keep it.`,
};
