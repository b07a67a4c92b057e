import { describe, expect, it } from 'vitest';
import { problem } from '../../../src/core/messages/problem.ts';
import { word, wordedCodes } from '../../../src/core/messages/word.ts';

describe('word', () => {
  it('gives every code a sentence and a remedy, even without values and line', () => {
    expect(wordedCodes().length).toBeGreaterThan(30);
    for (const code of wordedCodes()) {
      const { sentence, remedy } = word(problem(code, { kind: 'document' }));
      expect(sentence, code).toMatch(/[.!?]$/);
      expect(remedy, code).toMatch(/[.!?]$/);
    }
  });

  it('names place and number', () => {
    const text = problem(
      'measured.unreadable-lines',
      { kind: 'file', id: 'a.txt', line: 12 },
      { count: 3, text: '20 x' },
    );
    expect(word(text).sentence).toBe(
      'Line 12 of “a.txt”, “20 x”, cannot be read like the lines before it, and 3 lines in all cannot.',
    );
    const typed = problem('units.wrong-kind', { kind: 'field' }, { text: '3 V', found: 'voltage', wanted: 'length' });
    expect(word(typed)).toEqual({
      sentence: '“3 V” is a voltage, but this field takes a length.',
      remedy: 'Type a length like this: 18 mm, 3/4 in.',
    });
    const comma = problem('units.ambiguous-comma', { kind: 'field' }, { text: '1,500', wanted: 'length' });
    expect(word(comma).remedy).toBe('Write 1.500 or 1500.');
  });

  it('owns up to a code that has no sentence, naming code and place', () => {
    expect(word(problem('no.such-code', { kind: 'part', id: 'C1' })).sentence).toBe(
      'Something is wrong here (C1), and there is no description for it yet: no.such-code.',
    );
    expect(word(problem('constructor', { kind: 'line', line: 4 })).sentence).toContain('(line 4)');
  });
});
