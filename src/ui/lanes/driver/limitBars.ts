import type { KeyFigures } from '../../../core/design/evaluation.ts';
import { PORT_SPEED_LOUD_M_PER_S } from '../../../core/design/findings/portSpeed.ts';
import type { Enclosure } from '../../../core/document/schema.ts';
import type { UnitSystem } from '../../../core/units/quantityKind.ts';
import { figureText } from '../figureText.ts';

/** One live limit of a way: how much of it is used at the set drive, and where. */
export interface LimitBarPlan {
  readonly name: string;
  /** Used share of the limit; null where the driver states no limit. */
  readonly share: number | null;
  /** What it is and how it is counted, in full. */
  readonly about: string;
  /** "5.3 of 6.0 mm" */
  readonly amount: string;
  /** "at 38 Hz" */
  readonly where: string;
}

/** The limits of the way with this speaker, from the key figures at the set drive: excursion, heat in the coil, port air. */
export function limitBars(
  speakerId: string,
  figures: KeyFigures,
  enclosure: Enclosure,
  system: UnitSystem,
): LimitBarPlan[] {
  const bars: LimitBarPlan[] = [];
  const at = (hz: number) => `at ${figureText(hz, 'frequency', system, 2)}`;
  const excursion = figures.excursions.find((entry) => entry.partId === speakerId);
  if (excursion) {
    bars.push({
      name: 'excursion',
      about: 'Excursion at the set drive: how far the cone moves, one way, peak; of its linear excursion Xmax',
      share: excursion.limitM === null ? null : excursion.peakM / excursion.limitM,
      amount: ofLimit(excursion.peakM * 1e3, excursion.limitM === null ? null : excursion.limitM * 1e3, 'mm'),
      where: at(excursion.atHz),
    });
  }
  const heat = figures.coilPowers.find((entry) => entry.partId === speakerId);
  if (heat) {
    bars.push({
      name: 'heat in coil',
      about: 'Heat in the voice coil at the set drive, from a lasting sine; of its rated power',
      share: heat.ratedW === null ? null : heat.powerW / heat.ratedW,
      amount: ofLimit(heat.powerW, heat.ratedW, 'W'),
      where: at(heat.atHz),
    });
  }
  const chamberId = enclosure.mounts.find((mount) => mount.partId === speakerId)?.chamberId;
  for (const port of enclosure.ports) {
    if (chamberId === undefined || chamberId === null || port.chamberId !== chamberId) continue;
    const speed = figures.portSpeeds.find((entry) => entry.id === port.id);
    if (!speed) continue;
    bars.push({
      name: enclosure.ports.length > 1 ? `port air ${port.id}` : 'port air',
      about:
        'Speed of the air in the port at the set drive, mean over its cross-section, peak; the guide value is not a limit (from memory)',
      share: speed.peakMPerS / PORT_SPEED_LOUD_M_PER_S,
      amount: `${short(speed.peakMPerS)} m/s, guide ${PORT_SPEED_LOUD_M_PER_S}`,
      where: at(speed.atHz),
    });
  }
  return bars;
}

const short = (value: number) =>
  value >= 10 ? value.toFixed(0) : value >= 0.095 ? value.toFixed(1) : value.toFixed(2);

function ofLimit(value: number, limit: number | null, unit: string): string {
  return limit === null ? `${short(value)} ${unit}, no limit stated` : `${short(value)} of ${short(limit)} ${unit}`;
}
