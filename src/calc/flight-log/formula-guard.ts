/**
 * Spreadsheets run a cell that begins with one of `= + - @`, also after white space or in full width; and where they part cells at another mark than
 * the file does, a cell can begin in the middle of a text. An apostrophe before each such sign makes it a text; reading takes it away again.
 */
const sign = String.raw`(?='*[=+\-@\uFF1D\uFF0B\uFF0D\uFF20])`;
const start = String.raw`(^|[;,\t\r\n|])(["\s]*)`;
const unguarded = new RegExp(start + sign, 'gu');
const guarded = new RegExp(`${start}'${sign}`, 'gu');

/** A text that no spreadsheet takes for a formula. */
export const guardCell = (text: string): string => text.replace(unguarded, '$1$2\'');

/** The text that was guarded. */
export const unguardCell = (cell: string): string => cell.replace(guarded, '$1$2');
