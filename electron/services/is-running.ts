/** Whether a program of this machine runs. Signal 0 only asks; one of another account runs, though it may not be asked. */
export function isRunning(pid: number): boolean {
  try {
    return process.kill(pid, 0)
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code !== 'ESRCH'
  }
}
