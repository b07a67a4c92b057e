import { type Problem, problem } from '../../messages/problem.ts';

/** One statement of a netlist with its continuation lines joined, and the comment behind it. */
export interface NetlistLine {
  /** Where it begins, counted from 1. */
  readonly line: number;
  readonly tokens: readonly string[];
  readonly comment: string;
}

/** A quoted name, or anything without white space. An equals sign binds what stands around it. */
const TOKEN = /"[^"]*"|[^\s"]+|"/g;

/**
 * Splits a netlist into statements: `*` at the start of a line and `;` anywhere begin a comment, `+` continues the
 * statement before, `.end` closes the text. Every other directive, and text behind `.end`, is a Problem.
 */
export function netlistLines(text: string): { readonly lines: NetlistLine[]; readonly problems: Problem[] } {
  const lines: { line: number; tokens: string[]; comment: string }[] = [];
  const problems: Problem[] = [];
  let ended = false;
  text.split(/\r\n|\r|\n/).forEach((raw, index) => {
    const line = index + 1;
    const at = { kind: 'line', line } as const;
    const { statement, comment } = splitComment(raw);
    if (statement === '' || statement.startsWith('*')) return;
    if (ended) {
      problems.push(problem('circuit.netlist-after-end', at, { text: excerpt(statement) }));
    } else if (/^\.end$/i.test(statement)) {
      ended = true;
    } else if (statement.startsWith('.')) {
      problems.push(problem('circuit.netlist-directive', at, { text: excerpt(statement) }));
    } else if (statement.startsWith('+')) {
      const before = lines.at(-1);
      if (before === undefined) problems.push(problem('circuit.netlist-continuation', at));
      else {
        before.tokens.push(...tokensOf(statement.slice(1)));
        before.comment = [before.comment, comment].filter((part) => part !== '').join(' ');
      }
    } else lines.push({ line, tokens: tokensOf(statement), comment });
  });
  return { lines, problems };
}

/** Shortens what is quoted back to the person. */
export const excerpt = (text: string): string => (text.length > 40 ? `${text.slice(0, 39)}…` : text);

const tokensOf = (statement: string): string[] => statement.replace(/\s*=\s*/g, '=').match(TOKEN) ?? [];

/** The statement before the first `;` that is not inside quotation marks, and the comment behind it. */
function splitComment(raw: string): { statement: string; comment: string } {
  let quoted = false;
  for (let i = 0; i < raw.length; i++) {
    if (raw[i] === '"') quoted = !quoted;
    if (raw[i] === ';' && !quoted) return { statement: raw.slice(0, i).trim(), comment: raw.slice(i + 1).trim() };
  }
  return { statement: raw.trim(), comment: '' };
}
