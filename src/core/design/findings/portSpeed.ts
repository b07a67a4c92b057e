import type { Check } from './context.ts';

/** Guide values, not limits, for the peak air speed in a port: straight edges are often heard from about 10 m/s, any port from 17 m/s. From memory. */
export const PORT_SPEED_CAREFUL_M_PER_S = 10;
export const PORT_SPEED_LOUD_M_PER_S = 17;

/** A port whose air moves so fast at the set drive that it is likely heard. */
export const portSpeed: Check = ({ figures }) =>
  figures.portSpeeds.flatMap(({ id, peakMPerS, atHz }) => {
    if (peakMPerS <= PORT_SPEED_CAREFUL_M_PER_S) return [];
    const loud = peakMPerS > PORT_SPEED_LOUD_M_PER_S;
    const guideMPerS = loud ? PORT_SPEED_LOUD_M_PER_S : PORT_SPEED_CAREFUL_M_PER_S;
    return [
      {
        severity: loud ? ('warning' as const) : ('note' as const),
        code: loud ? 'finding.port-loud' : 'finding.port-careful',
        place: { kind: 'port' as const, id },
        values: { peakMPerS, atHz, guideMPerS },
      },
    ];
  });
