const HELD = '\u00a0'

/** A sentence whose lines never break inside a measure: `2 1/2 in`, `18 %`, `224 lb/in`. */
export const unbroken = (sentence: string): string =>
  sentence
    .replace(/(\d) (?=\d+\/\d)/g, `$1${HELD}`)
    .replace(/(\d) (?=(?:in|mm|cm|ft|lb|kg|N|J|psi|bar|mph|g|cu|%|°)(?![\w]))/g, `$1${HELD}`)
