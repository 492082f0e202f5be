import { own, type Phrase, say } from '../words';

/** What the system says, in words that fit a file as well as a folder. */
const REASONS: Readonly<Record<string, Phrase>> = {
  EACCES: say`that is not allowed`,
  EPERM: say`that is not allowed`,
  EROFS: say`the disk can only be read`,
  ENOSPC: say`the disk is full`,
  EDQUOT: say`your share of the disk is full`,
  EFBIG: say`the file grew larger than the disk takes`,
  EIO: say`the disk failed`,
  EBUSY: say`it is in use`,
  EMFILE: say`too many files are open`,
  ENFILE: say`too many files are open`,
  ENAMETOOLONG: say`the name is too long`,
  ELOOP: say`its links lead round in a circle`,
  ENOENT: say`it is not there any more`,
  ENOTDIR: say`there is a file where a folder should be`,
  EEXIST: say`there is something else of that name`,
  EISDIR: say`it is a folder, not a file`,
};

/**
 * Why the system refused a call, in words, with its own code.
 *
 * @param error what was thrown
 * @returns undefined where it was not the system that refused: a fault of the program
 */
export function systemReason(error: unknown): Phrase | undefined {
  const { code, syscall } = error as NodeJS.ErrnoException;
  if (code === undefined || syscall === undefined) return undefined;
  const reason = REASONS[code];
  return reason === undefined ? say`the system says ${own(code)}` : say`${reason} (${own(code)})`;
}
