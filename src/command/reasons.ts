/** What the system says, in words that fit a file as well as a folder. */
const REASONS: Readonly<Record<string, string>> = {
  EACCES: 'that is not allowed',
  EPERM: 'that is not allowed',
  EROFS: 'the disk can only be read',
  ENOSPC: 'the disk is full',
  EDQUOT: 'your share of the disk is full',
  EFBIG: 'the file grew larger than the disk takes',
  EIO: 'the disk failed',
  EBUSY: 'it is in use',
  EMFILE: 'too many files are open',
  ENFILE: 'too many files are open',
  ENAMETOOLONG: 'the name is too long',
  ELOOP: 'its links lead round in a circle',
  ENOENT: 'it is not there any more',
  ENOTDIR: 'there is a file where a folder should be',
  EEXIST: 'there is something else of that name',
  EISDIR: 'it is a folder, not a file',
};

/**
 * Why the system refused a call, in words, with its own code.
 *
 * @param error what was thrown
 * @returns undefined where it was not the system that refused: a fault of the program
 */
export function systemReason(error: unknown): string | undefined {
  const { code, syscall } = error as NodeJS.ErrnoException;
  if (code === undefined || syscall === undefined) return undefined;
  const words = REASONS[code];
  return words === undefined ? `the system says ${code}` : `${words} (${code})`;
}
