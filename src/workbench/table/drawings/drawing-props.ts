import type { Draft } from '../../../project';

/** Every station's drawing is drawn from the draft alone. */
export interface DrawingProps {
  readonly draft: Draft;
}
