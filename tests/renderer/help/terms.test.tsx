import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it } from 'vitest'
import { matching } from '../../../renderer/help/search.ts'
import { termOfGroup } from '../../../renderer/help/term-of-group.ts'
import { termGroups } from '../../../renderer/help/terms.tsx'
import { groups } from '../../../renderer/panels/measurements/groups.ts'

const terms = termGroups.flatMap(group => group.terms)

/** Words somebody must find here. */
const wanted = [
  'wheel travel',
  'ride height',
  'engagement',
  'stop gap',
  'shaft showing',
  'motion ratio',
  'preload',
  'crossover',
  'coil bind',
  'bump stop charge',
  'rising rate',
  'coilover share',
  'full bump',
  'full droop',
  'wheel rate',
  'shelf',
]

describe('help with the words', () => {
  it('explains every word that is wanted', () => {
    expect(terms.map(({ name }) => name.toLowerCase())).toEqual(expect.arrayContaining(wanted))
  })

  it.each(terms.map(term => [term.name, term] as const))(
    '%s: short, in whole sentences, with a picture',
    (_name, term) => {
      const words = term.says.join(' ')
      expect(words.length).toBeLessThan(400)
      for (const sentence of [...term.says, ...(term.caution === undefined ? [] : [term.caution])])
        expect(sentence).toMatch(/^[A-Z].*\.$/)
      expect(renderToStaticMarkup(<i>{term.picture}</i>)).toMatch(/<svg.*<path/)
      expect(renderToStaticMarkup(<i>{term.picture}</i>)).not.toContain('NaN')
    },
  )

  it('has no word twice', () => expect(new Set(terms.map(({ id }) => id)).size).toBe(terms.length))

  it('warns wherever nitrogen is let in or out', () => {
    for (const term of terms.filter(({ says }) => /nitrogen/i.test(says.join(' '))))
      expect(term.caution).toMatch(/kill/)
  })

  it.each(groups.map(({ id }) => id))('has a word for the ? of %s', id => {
    expect(terms.map(term => term.id)).toContain(termOfGroup(id))
  })

  it('finds by name first, then by what is said', () => {
    const found = matching(terms, 'charge').map(({ name }) => name)
    expect(found[0]).toBe('Bump stop charge')
    expect(found).toContain('Step')
    expect(matching(terms, 'carburettor')).toEqual([])
    expect(matching(terms, ' ')).toEqual(terms)
  })
})
