import { word } from '../../../../../core/messages/word.ts';
import { useAlike } from '../../../useAlike.ts';

/** Something on the cabinet that is in the way of something else, in words. */
export interface Fault {
  readonly kind: 'mount' | 'port';
  readonly id: string;
  readonly severity: 'warning' | 'note';
  readonly sentences: readonly string[];
}

/** What the findings say of the cabinet's fit, gathered by the thing it concerns. Computed with the findings, not here. */
export const useFaults = (): readonly Fault[] =>
  useAlike((s) => {
    const faults = new Map<string, Fault>();
    for (const finding of s.evaluation?.findings ?? []) {
      const { kind, id } = finding.place;
      if (!finding.code.startsWith('build.') || id === undefined || (kind !== 'mount' && kind !== 'port')) continue;
      const key = `${kind} ${id}`;
      const before = faults.get(key);
      const severity = before?.severity === 'warning' || finding.severity !== 'note' ? 'warning' : 'note';
      const sentences = [...(before?.sentences ?? []), word(finding).sentence];
      faults.set(key, { kind, id, severity, sentences: [...new Set(sentences)] });
    }
    return [...faults.values()];
  });
