import type { Term } from './terms.tsx'

/** The words that have every part of what was typed in their name or in what is said of them; by name first. */
export function matching(terms: readonly Term[], sought: string): readonly Term[] {
  const parts = sought.toLowerCase().split(/\s+/).filter(Boolean)
  const has = (text: string) => parts.every(part => text.toLowerCase().includes(part))
  const named = terms.filter(({ name }) => has(name))
  const said = terms.filter(term => !named.includes(term) && has([term.name, ...term.says].join(' ')))
  return [...named, ...said]
}
