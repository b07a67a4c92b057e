/** A line of the text with its number, counted from 1. */
export interface SourceLine {
  readonly line: number;
  readonly text: string;
}

export interface SourceLines {
  /** Lines that begin with a number. */
  readonly numeric: readonly SourceLine[];
  /** All other lines that say something: comments (their mark taken off) and headers. */
  readonly words: readonly SourceLine[];
}

const COMMENT = /^(?:[*#;%!]|\/\/)+/;
const BEGINS_WITH_NUMBER = /^[+-]?[.,]?\d/;

/**
 * Sorts the lines of a text into those that begin with a number and those that do not. Byte-order mark, line ends of any
 * kind, quotation marks and a frame of upright strokes do not matter; comments begin with * # ; % ! or //.
 */
export function sourceLines(text: string): SourceLines {
  const numeric: SourceLine[] = [];
  const words: SourceLine[] = [];
  const lines = text.split(/\r\n|\n|\r/);
  for (const [index, whole] of lines.entries()) {
    // trim takes a byte-order mark off too.
    const trimmed = whole.replaceAll('"', ' ').replaceAll('\u2212', '-').trim();
    if (trimmed === '') continue;
    const line = index + 1;
    const bare = trimmed.replace(/^\|/, '').trim();
    if (BEGINS_WITH_NUMBER.test(bare)) numeric.push({ line, text: bare });
    else words.push({ line, text: trimmed.replace(COMMENT, '').trim() });
  }
  return { numeric, words };
}
