import { create } from 'zustand';
import type { Curve } from '../../plane';

/** A place on the drawing, by a name that tells it from others. */
export interface LitPlace {
  readonly name: string;
  /** As they lie on the drawing; none until they are found. */
  readonly curves: readonly Curve[];
}

/** The place that is asked about: it is lit, and the paper comes near to it. */
export const useLitPlace = create<{ readonly place: LitPlace | undefined }>()(() => ({ place: undefined }));

export const lightPlace = (place: LitPlace | undefined): void => useLitPlace.setState({ place });
