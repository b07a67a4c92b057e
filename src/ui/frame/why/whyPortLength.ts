import { figure, type WhyInput, type WhyNote } from './whyNote.ts';

/** Why a port is as long as it is: the tuning asks for a mass of air, and the air at both ends belongs to it. */
export function whyPortLength({ evaluation, project, units }: WhyInput, portId: string): WhyNote | null {
  const { model, keyFigures } = evaluation;
  const port = model.ports.find((candidate) => candidate.id === portId);
  const drawn = project.enclosure.ports.find((candidate) => candidate.id === portId);
  const chamber = model.chambers.find((candidate) => candidate.id === port?.chamberId);
  const tuningHz = keyFigures.chambers.find((candidate) => candidate.id === port?.chamberId)?.tuningHz;
  if (!port || !drawn || !chamber || !tuningHz) return null;
  const alone = model.ports.filter((other) => other.chamberId === port.chamberId).length === 1;
  return {
    title: 'Why this port length?',
    formula: alone ? 'L = c² · S / (4π² · fB² · V) − ΔL' : 'Σ(S / Lₑ) = 4π² · fB² · V / c²,  L = Lₑ − ΔL',
    lines: [
      { symbol: 'c', meaning: 'speed of sound', value: figure(model.air.soundSpeedMPerS, 'speed', units, 4) },
      { symbol: 'S', meaning: 'cross-section of the port', value: figure(port.areaM2, 'area', units) },
      { symbol: 'fB', meaning: 'tuning', value: figure(tuningHz, 'frequency') },
      { symbol: 'V', meaning: 'apparent volume of air', value: figure(chamber.volumeM3, 'volume', units) },
      {
        symbol: 'ΔL',
        meaning: `air that swings along at both ends (${endName(drawn.innerEnd)} inside, ${endName(drawn.outerEnd)} outside)`,
        value: figure(port.effectiveLengthM - drawn.lengthM, 'length', units),
      },
    ],
    result: { symbol: 'L', meaning: 'length of the port', value: figure(drawn.lengthM, 'length', units, 4) },
    holds:
      'Tuning goes with one over the root of L + ΔL; since ΔL stays, a short port tunes less high than its length suggests. The end ' +
      'corrections leave about 3 % of doubt in the tuning: cut long, measure the dip between the impedance peaks, and trim.',
    source:
      'L. L. Beranek, Acoustics, 1954, section 5.4; end corrections: H. Levine and J. Schwinger, Phys. Rev. 73 (1948), ' +
      'unflanged; A. N. Norris and I. C. Sheng, J. Sound Vib. 135 (1989), flanged (from memory)',
  };
}

const endName = (end: 'free' | 'flanged' | 'on-wall'): string =>
  ({ free: 'free end', flanged: 'flush in a panel', 'on-wall': 'lying on a wall' })[end];
