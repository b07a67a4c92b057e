import { describe, expect, it } from 'vitest';
import { documentWording } from '../../../src/core/messages/document.ts';
import { documentFields, pathInWords } from '../../../src/core/messages/documentFields.ts';

describe('sentences of the document', () => {
  it('end as sentences and say what to do, whatever values come', () => {
    for (const [code, wording] of Object.entries(documentWording)) {
      const { sentence, remedy } = wording(
        { field: 'widthM', found: 1, least: 0, most: 2 },
        { kind: 'part', id: 'R1' },
      );
      expect(sentence, code).toMatch(/^\S.*\.$/u);
      expect(remedy, code).toMatch(/^[A-Z].*\.$/u);
      expect(code).toMatch(/^document\.[a-z-]+$/);
    }
  });

  it.each([
    ['drivers.1.entered.fsHz', 'resonance fs of driver 2'],
    ['enclosure.widthM', 'width'],
    ['enclosure.chambers.0.leak.q', 'Q of leak of chamber 1'],
    ['curves.3.frequenciesHz.7', 'entry 8 of frequencies of curve 4'],
    ['snapshots.0.network.parts.2.ohm', 'resistance of part 3 of kept state 1'],
    ['wobble', '"wobble"'],
  ])('%s is %s', (path, words) => {
    expect(pathInWords(path)).toBe(words);
  });

  it('give every shown unit its own scale', () => {
    for (const [field, { unit, perSi }] of Object.entries(documentFields)) {
      expect(perSi, field).toBeGreaterThan(0);
      if (unit === '') expect(perSi, field).toBe(1);
      if (unit === 'mm') expect(perSi, field).toBe(1000);
    }
  });
});
