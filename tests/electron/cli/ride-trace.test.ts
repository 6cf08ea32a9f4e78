import { expect, it } from 'vitest'
import { csvWords } from '../../../electron/cli/ride-trace.ts'

it.each([
  ['plain', 'plain'],
  ['with, comma', '"with, comma"'],
  ['a "quote"', '"a ""quote"""'],
  ['=1+1', "'=1+1"],
  ['@sum', "'@sum"],
  ['-2', "'-2"],
  ['+2', "'+2"],
  ['\tx', "'\tx"],
  ['=a,b', `"'=a,b"`],
])('words %j in a CSV file are %j: no spreadsheet runs them', (words, cell) => expect(csvWords(words)).toBe(cell))
