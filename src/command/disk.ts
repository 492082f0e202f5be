import fs from 'node:fs';

/** The system's calls through which everything is written, so that a test can let any of them fail. */
export type Disk = Pick<
  typeof fs,
  | 'closeSync'
  | 'copyFileSync'
  | 'fsyncSync'
  | 'linkSync'
  | 'lstatSync'
  | 'mkdirSync'
  | 'openSync'
  | 'readdirSync'
  | 'renameSync'
  | 'rmdirSync'
  | 'statSync'
  | 'unlinkSync'
  | 'writeSync'
>;

/** The real one. */
export const DISK: Disk = fs;
