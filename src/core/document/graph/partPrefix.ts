import type { PartKind } from '../../circuit/part.ts';

/** What names of a kind begin with, as on drawings and in circuit text, where V is a source. */
export const partPrefix: Readonly<Record<PartKind, string>> = {
  resistor: 'R',
  capacitor: 'C',
  inductor: 'L',
  jumper: 'J',
  speaker: 'LS',
  amplifier: 'V',
};

/** Whether a name says this kind: its leading letters are the prefix (so `LS1` is no inductor), nothing but name characters. */
export function saysKind(id: string, kind: PartKind): boolean {
  if (!/^[A-Za-z][A-Za-z0-9_.-]*$/.test(id)) return false;
  const upper = id.toUpperCase();
  return upper.startsWith(partPrefix[kind]) && !(kind === 'inductor' && upper.startsWith(partPrefix.speaker));
}
