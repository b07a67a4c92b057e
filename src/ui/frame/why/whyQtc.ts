import { figure, type WhyInput, type WhyNote } from './whyNote.ts';

/** Why a sealed chamber damps its driver as it does: its air stiffens the spring and raises every quality factor alike. */
export function whyQtc({ evaluation, units }: WhyInput, chamberId: string): WhyNote | null {
  const { model, keyFigures } = evaluation;
  const chamber = model.chambers.find((candidate) => candidate.id === chamberId);
  const sealed = keyFigures.chambers.find((candidate) => candidate.id === chamberId)?.sealed;
  const inside = model.speakers.filter((speaker) => speaker.chamberId === chamberId);
  const first = inside[0];
  if (!chamber || !sealed || !first) return null;
  const { cmsMPerN, sdM2 } = first.parameters;
  const vasM3 = model.air.densityKgPerM3 * model.air.soundSpeedMPerS ** 2 * sdM2 ** 2 * cmsMPerN * inside.length;
  const rise = Math.sqrt(1 + vasM3 / chamber.volumeM3);
  return {
    title: 'Why this Qtc?',
    formula: 'Qtc = Qts · √(1 + Vas / V),  fc = fs · √(1 + Vas / V)',
    lines: [
      { symbol: 'Qts', meaning: 'the driver’s own, in free air', value: (sealed.qtc / rise).toFixed(2) },
      { symbol: 'fs', meaning: 'its resonance in free air', value: figure(sealed.fcHz / rise, 'frequency') },
      {
        symbol: 'Vas',
        meaning:
          inside.length > 1 ? `air as stiff as all ${inside.length} suspensions` : 'air as stiff as its suspension',
        value: figure(vasM3, 'volume', units),
      },
      { symbol: 'V', meaning: 'apparent volume of air', value: figure(chamber.volumeM3, 'volume', units) },
      { symbol: 'fc', meaning: 'resonance in the chamber', value: figure(sealed.fcHz, 'frequency') },
    ],
    result: { symbol: 'Qtc', meaning: 'total quality factor in the chamber', value: sealed.qtc.toFixed(2) },
    holds:
      'Holds for a chamber without leaks at low frequencies, driven by an amplifier without resistance. 0.707 is flattest, 0.5 ' +
      'settles without overshoot, above 1 the bass rises before it falls.',
    source: 'R. H. Small, “Closed-Box Loudspeaker Systems”, J. Audio Eng. Soc. 20 (1972) (from memory)',
  };
}
