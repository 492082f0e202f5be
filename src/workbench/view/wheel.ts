/** What a turn of a wheel brings, by the units in which the browser tells of it (W3C UI Events, `deltaMode`). */
export interface Turn {
  readonly deltaY: number;
  /** 0: pixels, 1: lines, 2: pages. */
  readonly deltaMode: number;
  /** A pinch on a touchpad comes as a wheel with the control key, in much smaller steps. */
  readonly ctrlKey: boolean;
}

/** One notch zooms by so much, whatever the wheel. */
const NOTCH = 1.16;
/** A notch of a mouse, pixels: Chromium sends 100 to 120 of them. Touchpads send a few at a time, many times. */
const NOTCH_PIXELS = 100;
/** Fingers that spread by so many pixels are a notch. */
const PINCH_PIXELS = 15;

/**
 * By how much a turn of the wheel zooms. Lines and pages come only from wheels with notches, and how many of them a
 * notch is depends on settings that are meant for reading; so there an event is a notch. Of pixels a notch is the most
 * that one event can bring.
 */
export function wheelFactor({ deltaY, deltaMode, ctrlKey }: Turn): number {
  const notches = deltaMode === 0 ? deltaY / (ctrlKey ? PINCH_PIXELS : NOTCH_PIXELS) : Math.sign(deltaY);
  return NOTCH ** -Math.min(1, Math.max(-1, notches));
}
