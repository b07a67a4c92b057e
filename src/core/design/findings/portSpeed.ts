import { PORT_THRESHOLDS } from '../../acoustics/index.ts';
import type { Finding } from '../../messages/problem.ts';
import type { KeyFigures } from '../evaluation.ts';
import type { Check } from './context.ts';

/** Guide values, not limits, for the peak air speed in a port: straight edges are often heard from about 10 m/s, any port from 17 m/s. From memory. */
export const PORT_SPEED_CAREFUL_M_PER_S = 10;
export const PORT_SPEED_LOUD_M_PER_S = 17;
/** The same where both ends are rounded generously. */
export const FLARED_SPEED_CAREFUL_M_PER_S = PORT_THRESHOLDS.flaredCautionMPerS.value;
export const FLARED_SPEED_LOUD_M_PER_S = PORT_THRESHOLDS.flaredCeilingMPerS.value;

/** Ports and mouths of lines whose air moves so fast at the set drive that it is likely heard, or so far that a rounded edge sheds it. */
export const portSpeed: Check = ({ figures: { portSpeeds, lineSpeeds } }) => [
  ...portSpeeds.flatMap((port) => [...airTooFast(port, 'port', PORT), ...airTooFar(port)]),
  ...lineSpeeds.flatMap((mouth) => airTooFast(mouth, 'duct', MOUTH)),
];

type Air = KeyFigures['lineSpeeds'][number];

const PORT = { loud: 'finding.port-loud', careful: 'finding.port-careful', rounded: 'finding.port-careful-rounded' };
/** A line's mouth always counts as straight. */
const MOUTH = { loud: 'finding.mouth-loud', careful: 'finding.mouth-careful', rounded: 'finding.mouth-careful' };

function airTooFast(
  { id, peakMPerS, atHz, carefulMPerS, loudMPerS }: Air,
  kind: 'port' | 'duct',
  codes: typeof PORT,
): Finding[] {
  if (peakMPerS <= carefulMPerS) return [];
  const loud = peakMPerS > loudMPerS;
  const quieter = carefulMPerS === FLARED_SPEED_CAREFUL_M_PER_S ? codes.rounded : codes.careful;
  const code = loud ? codes.loud : quieter;
  return [
    {
      severity: loud ? 'warning' : 'note',
      code,
      place: { kind, id },
      values: { peakMPerS, atHz, guideMPerS: loud ? loudMPerS : carefulMPerS },
    },
  ];
}

/** A port that its speed already gives away needs no second reason. */
function airTooFar({ id, peakMPerS, carefulMPerS, stroke }: KeyFigures['portSpeeds'][number]): Finding[] {
  if (stroke?.concern !== 'audible' || peakMPerS > carefulMPerS) return [];
  const { overEdge, atHz, edgeRadiusM } = stroke;
  return [
    {
      severity: 'note',
      code: 'finding.port-stroke',
      place: { kind: 'port', id },
      values: { strokeM: overEdge * edgeRadiusM, edgeRadiusM, atHz },
    },
  ];
}
