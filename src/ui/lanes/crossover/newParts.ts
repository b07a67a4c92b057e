import type { NewPart } from '../../../core/document/command.ts';

export type PassiveKind = 'resistor' | 'capacitor' | 'inductor' | 'jumper';

export const PASSIVE_KINDS: readonly PassiveKind[] = ['resistor', 'capacitor', 'inductor', 'jumper'];

/**
 * A part to begin with, of ordinary size for its place: small in series with a signal, large across one, so that putting
 * it in changes little until its value is set. Series resistances are those of ordinary parts (common practice, no source).
 */
export function newPart(kind: PassiveKind, place: 'series' | 'across'): NewPart {
  const series = place === 'series';
  switch (kind) {
    case 'resistor':
      return { kind, ohm: series ? 1 : 22, ratedPowerW: 10, note: '' };
    case 'capacitor':
      return { kind, farad: series ? 47e-6 : 1e-6, esrOhm: 0.05, note: '' };
    case 'inductor':
      return {
        kind,
        henry: series ? 0.1e-3 : 4.7e-3,
        dcrOhm: series ? 0.1 : 0.6,
        coreLossTangent: 0,
        note: '',
      };
    case 'jumper':
      return { kind, note: '' };
  }
}
