const words: Readonly<Record<string, string>> = {
  ENOENT: 'it has been moved, renamed or deleted',
  ENOTDIR: 'its folder has been moved, renamed or deleted',
  EISDIR: 'it is a folder',
  EACCES: 'this account is not allowed to',
  EPERM: 'this account is not allowed to',
  EROFS: 'the disk is read-only',
  ENOSPC: 'the disk is full',
  EDQUOT: 'the space allowed on this disk is used up',
  EFBIG: 'the disk does not take files of this size',
  ENAMETOOLONG: 'the name is too long',
  ELOOP: 'its links lead in a circle',
  EBUSY: 'another program is using it',
  ETXTBSY: 'another program is using it',
  EIO: 'the disk reports a fault',
  ENODEV: 'the disk has been taken out or switched off',
  ENXIO: 'the disk has been taken out or switched off',
  ESTALE: 'the network drive is out of reach',
  ETIMEDOUT: 'the network drive does not answer',
  EMFILE: 'too many files are open',
  ENFILE: 'too many files are open',
}

/**
 * Why the system refused, in words that follow a colon; never a path.
 * Anything that is not a refusal of the system is a mistake of ours, and thrown on.
 */
export function reason(error: unknown): string {
  const code = refusal(error)
  if (code === null) throw error
  return words[code] ?? `the system says ${code}`
}

/** The system's code for its refusal, such as ENOENT; null when the error is of another kind. */
export const refusal = (error: unknown): string | null =>
  error instanceof Error && 'syscall' in error && 'code' in error && typeof error.code === 'string' ? error.code : null
