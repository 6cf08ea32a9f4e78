/**
 * Text as a terminal may have it: line ends and tabs stay, other signs that would steer it do not. Titles and names come from files, and a file
 * may come from anybody.
 */
// biome-ignore lint/suspicious/noControlCharactersInRegex: control signs are what is replaced
export const printable = (text: string): string => text.replace(/[\u0000-\u0008\u000b-\u001f\u007f-\u009f]/g, '\ufffd')
