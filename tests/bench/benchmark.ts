/** Something measured against a reference in the same run, so that the machine's speed cancels. */
export interface Benchmark {
  name: string
  /** What the value is divided by, in words. */
  reference: string
  /** The largest ratio that is good enough. */
  budget: number
  /** Why it cannot be measured here; null or left out when it can. */
  missing?: () => string | null
  measure(): Promise<Sample>
}

/** Smaller is better: times in ns, sizes in bytes. */
export interface Sample {
  unit: 'ns' | 'bytes'
  value: number
  reference: number
}

export interface Kept {
  ratio: number
  value: number
  unit: Sample['unit']
}

export const ratioOf = ({ value, reference }: Sample): number => value / reference

/** 1 234 567 ns as a person reads it: 1.23 ms. */
export function amount(value: number, unit: Sample['unit']): string {
  const steps = unit === 'ns' ? (['ns', 'µs', 'ms', 's'] as const) : (['B', 'kB', 'MB', 'GB'] as const)
  const step = Math.max(0, Math.min(steps.length - 1, Math.floor(Math.log10(value) / 3)))
  return `${(value / 1000 ** step).toPrecision(3)} ${steps[step]}`
}
