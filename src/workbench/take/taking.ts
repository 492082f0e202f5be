import { create } from 'zustand';
import {
  type ClassKind,
  type FileKind,
  type Progress,
  safeFileName,
  type TableRecords,
  unlikeNames,
} from '../../files';
import type { Project } from '../../project';
import { useBench } from '../store/bench';
import type { ClassOrder, ProjectsOrder } from './files-worker';
import { takeFiles } from './take';

/** What is being made: a kind of file, or the set of a class. */
type Made = FileKind | 'class';

interface Taking {
  /** What is being made, and how far it has come; undefined where nothing is. */
  readonly busy: (Progress & { readonly kind: Made; readonly since: number }) | undefined;
  /** What was made last, and the name under which the browser was given it. */
  readonly saved: { readonly kind: Made; readonly fileName: string } | undefined;
  readonly stop: () => void;
}

/** The file that is being made: it goes on while the person looks at other stations. */
export const useTaking = create<Taking>()(() => ({ busy: undefined, saved: undefined, stop: () => {} }));

/**
 * Starts to make one kind of file of the project on the table; one at a time.
 *
 * @param more projects that are drawn together with it
 */
export function take(kind: FileKind, more: ProjectsOrder['projects'] = []): void {
  const { project } = useBench.getState().draft;
  const all = [{ name: safeFileName(project.name), project }, ...more];
  const names = unlikeNames(all.map(({ name }) => name));
  start(kind, { projects: all.map((one, i) => ({ ...one, name: names[i] ?? one.name })), kinds: [kind] });
}

/** Starts to make a class's set; one file is made at a time. */
export function takeClass(table: TableRecords, project: Project, kinds: readonly ClassKind[]): void {
  start('class', { table, project, kinds, name: safeFileName(project.name) });
}

function start(kind: Made, order: ProjectsOrder | ClassOrder): void {
  if (useTaking.getState().busy) return;
  const since = performance.now();
  const { over, stop } = takeFiles(order, {
    onProgress: (progress) => useTaking.setState({ busy: { kind, since, ...progress } }),
    onSaved: (fileName) => useTaking.setState({ saved: { kind, fileName } }),
  });
  useTaking.setState({ busy: { kind, since, share: 0, doing: '' }, saved: undefined, stop });
  void over.then(() => useTaking.setState({ busy: undefined }));
}
