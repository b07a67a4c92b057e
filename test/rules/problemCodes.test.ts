import { describe, expect, it } from 'vitest';
import { codesUsed, codesWorded } from './problemCodes.ts';
import { filesOfTree, textOf } from './tree.ts';

const sources = filesOfTree().filter((path) => /^src\/.*\.tsx?$/.test(path));
const MESSAGES = 'src/core/messages/';
const worded = new Set(
  sources.filter((path) => path.startsWith(MESSAGES)).flatMap((path) => codesWorded(path, textOf(path))),
);
const rooms = new Set([...worded].map((code) => code.split('.')[0]!));

describe('problem codes', () => {
  it('have a sentence, each of them', () => {
    const speechless = sources
      .filter((path) => !path.startsWith(MESSAGES))
      .flatMap((path) =>
        codesUsed(path, textOf(path), rooms)
          .filter((code) => !worded.has(code))
          .map((code) => `${path}: ${code}`),
      );
    expect(speechless).toEqual([]);
  });

  it('are found wherever they are written', () => {
    const text = [
      "fail(problem('circuit.floating-node', place));",
      "problem(open ? 'circuit.open' : 'circuit.short', place);",
      "const finding = { severity: 'note', code: 'speaker.too-loud' };",
      "refuse('document.no-part');",
      "open('other.file');",
    ].join('\n');
    expect(codesUsed('src/core/a.ts', text, new Set(['circuit', 'document']))).toEqual([
      'circuit.floating-node',
      'circuit.open',
      'circuit.short',
      'document.no-part',
      'speaker.too-loud',
    ]);
    expect(codesWorded('src/core/messages/a.ts', "export const a = { 'circuit.open': () => b, other: 1 };")).toEqual([
      'circuit.open',
    ]);
  });
});
