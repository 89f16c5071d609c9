/** What the system's error codes mean to a user; a code that is not here stands for itself. */
const REASONS: ReadonlyMap<string, string> = new Map([
  ['EACCES', 'you have no right to'],
  ['EPERM', 'you have no right to'],
  ['EROFS', 'it is read-only'],
  ['ENOENT', 'there is no such place'],
  ['ENOSPC', 'the disk is full'],
  ['EDQUOT', 'the quota is used up'],
  ['EEXIST', 'a file of that name is in the way'],
  ['ENOTDIR', 'a file is in the way'],
  ['ENAMETOOLONG', 'the name is too long'],
  ['ELOOP', 'its links run in a circle'],
]);

export const systemReason = (code: string): string => REASONS.get(code) ?? code;
