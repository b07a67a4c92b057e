import type { Check } from './context.ts';

/** Peak air speeds at which a port is likely heard: straight edges about 10 m/s, any port about 17 m/s. From memory; no agreed number. */
export const PORT_SPEED_CAREFUL_M_PER_S = 10;
export const PORT_SPEED_LOUD_M_PER_S = 17;

/** A port whose air moves so fast at the set drive that it is likely heard. */
export const portSpeed: Check = ({ figures }) =>
  figures.portSpeeds.flatMap(({ id, peakMPerS, atHz }) =>
    peakMPerS <= PORT_SPEED_CAREFUL_M_PER_S
      ? []
      : [
          {
            severity: peakMPerS > PORT_SPEED_LOUD_M_PER_S ? ('warning' as const) : ('note' as const),
            code: peakMPerS > PORT_SPEED_LOUD_M_PER_S ? 'finding.port-loud' : 'finding.port-careful',
            place: { kind: 'port' as const, id },
            values: { peakMPerS, atHz },
          },
        ],
  );
