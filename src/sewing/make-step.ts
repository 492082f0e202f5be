import { UNSAID } from '../words';
import type { SewingStep } from './step';

/** What every step must say; the rest is empty where it is left out. */
type Said = Pick<SewingStep, 'id' | 'part' | 'title' | 'tasks' | 'check' | 'time' | 'scene'> & Partial<SewingStep>;

/** A step, with nothing where nothing is said. */
export const makeStep = (said: Said): SewingStep => ({
  why: UNSAID,
  settings: [],
  cuts: [],
  sews: [],
  finishes: [],
  care: UNSAID,
  ...said,
});
