import type { AirProperties } from '../acoustics/airProperties.ts';
import { portEffectiveLengthM } from '../acoustics/port/portEffectiveLength.ts';
import { portSectionM2 } from '../acoustics/port/portShape.ts';
import { type StuffedVent, stuffedVent } from '../acoustics/port/stuffedVent.ts';
import { tubeResonancesHz } from '../acoustics/port/tubeResonances.ts';
import type { Port } from '../document/schema.ts';

/** First standing wave in a port's bore, Hz. Range and error: `tubeResonancesHz`. */
export const firstPipeResonanceHz = (port: Port, soundSpeedMPerS: number): number =>
  tubeResonancesHz(portEffectiveLengthM(port), soundSpeedMPerS, 1)[0]!;

/** What the stuffing makes of a port, all of its bores together; null without stuffing. Range and source: `stuffedVent`. */
export const ventFigures = (port: Port, air: AirProperties): StuffedVent | null =>
  port.stuffingPaSPerM2 > 0
    ? stuffedVent(
        {
          flowResistivityPaSPerM2: port.stuffingPaSPerM2,
          depthM: port.lengthM,
          areaM2: port.count * portSectionM2(port.shape),
          effectiveLengthM: portEffectiveLengthM(port),
        },
        air,
      )
    : null;
