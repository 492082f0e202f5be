import { create } from 'zustand';
import { type FileKind, type Progress, safeFileName, unlikeNames } from '../../files';
import { useBench } from '../store/bench';
import type { FilesOrder } from './files-worker';
import { takeFiles } from './take';

interface Taking {
  /** What is being made, and how far it has come; undefined where nothing is. */
  readonly busy: (Progress & { readonly kind: FileKind }) | undefined;
  readonly stop: () => void;
}

/** The file that is being made: it goes on while the person looks at other stations. */
export const useTaking = create<Taking>()(() => ({ busy: undefined, stop: () => {} }));

/**
 * Starts to make one kind of file of the project on the table; one at a time.
 *
 * @param more projects that are drawn together with it
 */
export function take(kind: FileKind, more: FilesOrder['projects'] = []): void {
  if (useTaking.getState().busy) return;
  const { project } = useBench.getState().draft;
  const all = [{ name: safeFileName(project.name), project }, ...more];
  const names = unlikeNames(all.map(({ name }) => name));
  const { over, stop } = takeFiles(
    all.map((one, i) => ({ ...one, name: names[i] ?? one.name })),
    [kind],
    (progress) => useTaking.setState({ busy: { kind, ...progress } }),
  );
  useTaking.setState({ busy: { kind, share: 0, doing: '' }, stop });
  void over.then(() => useTaking.setState({ busy: undefined }));
}
