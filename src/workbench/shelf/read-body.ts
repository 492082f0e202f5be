import * as v from 'valibot';
import { exampleProject, openProject } from '../../project';

/** A body kept apart from any project. */
export interface KeptBody {
  readonly id: string;
  readonly label: string;
  readonly figures: Readonly<Record<string, unknown>>;
  readonly savedAt: number;
}

const shape = v.object({
  label: v.pipe(v.string(), v.maxLength(200)),
  figures: v.record(v.string(), v.unknown()),
  savedAt: v.fallback(v.pipe(v.number(), v.finite()), 0),
});

/**
 * Reads a kept body.
 *
 * @param found what the storage gave back: it may be anything
 * @returns undefined where no project could be drafted for it
 */
export function readBody(found: unknown, id: string): KeptBody | undefined {
  const { success, output } = v.safeParse(shape, found);
  if (!success) return undefined;
  try {
    const opened = openProject(JSON.stringify({ ...exampleProject, body: { ...output.figures, label: output.label } }));
    if (!opened.ok) return undefined;
    const { label, ...figures } = opened.value.body;
    return { id, label, figures, savedAt: output.savedAt };
  } catch {
    // What can't even be written as text.
    return undefined;
  }
}
