import type { Mm } from '../length';
import type { Body } from './types';

/** The fullest of waist, high hip and hip: what must pass the waist. @source practice */
export const fullestGirth = (body: Pick<Body, 'waistGirth' | 'hipGirth' | 'highHipGirth'>): Mm =>
  Math.max(body.waistGirth, body.hipGirth, body.highHipGirth ?? 0);
