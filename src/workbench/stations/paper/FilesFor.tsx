import { type FileUse, SINGLE_FILES } from '../../../files';
import { said } from '../../../words';
import { TakeFile } from './TakeFile';

/** The files of one use, each with what it is for. */
export const FilesFor = ({ use }: { readonly use: FileUse }) =>
  SINGLE_FILES.filter((file) => file.use === use).map(({ kind, name, what }) => (
    <TakeFile key={kind} kind={kind} name={said(name)} what={said(what)} />
  ));
