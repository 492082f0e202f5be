import type { WorkingStep } from '../plane';

export function workingOf(_: unknown): readonly WorkingStep[] {
  return [];
}
