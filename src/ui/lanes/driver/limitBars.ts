import type { KeyFigures } from '../../../core/design/evaluation.ts';
import { fedBy } from '../../../core/design/fedBy.ts';
import { thingName } from '../../../core/document/describe/thingName.ts';
import type { Project } from '../../../core/document/schema.ts';
import type { UnitSystem } from '../../../core/units/quantityKind.ts';
import { waysInOrder } from '../../waysInOrder.ts';
import { figureText } from '../figureText.ts';

/** One live limit of a way: how much of it is used at the set drive, and where. */
export interface LimitBarPlan {
  readonly name: string;
  /** Used share of the limit; null where none is stated. */
  readonly share: number | null;
  /** What it is and how it is counted, in full. */
  readonly about: string;
  /** "5.3 of 6.0 mm" */
  readonly amount: string;
  /** "at 38 Hz" */
  readonly where: string;
}

/**
 * The limits of the way with this speaker, from the key figures at the set drive: excursion, heat of the coil, what moves in its
 * chambers' openings, and the amplifier, which stands with the lowest of the ways that it feeds. Which bars there are depends on
 * the document alone, so that they stay where they are while values change.
 */
export function limitBars(
  speakerId: string,
  figures: KeyFigures,
  project: Project,
  system: UnitSystem,
): LimitBarPlan[] {
  const at = (hz: number) => `at ${figureText(hz, 'frequency', system, 2)}`;
  return [
    ...coneBars(speakerId, figures, at),
    ...heatBars(speakerId, figures, project.air.temperatureC, system),
    ...openingBars(speakerId, figures, project, at),
    ...amplifierBars(speakerId, figures, project, at),
  ];
}

type At = (hz: number) => string;

const coneBars = (speakerId: string, { excursions }: KeyFigures, at: At): LimitBarPlan[] =>
  excursions
    .filter(({ partId }) => partId === speakerId)
    .map((travel) => ({
      name: 'excursion',
      about: 'Excursion at the set drive: how far the cone moves, one way, peak; of its linear excursion Xmax',
      ...travelled(travel, at),
    }));

const heatBars = (speakerId: string, { coilHeats }: KeyFigures, startC: number, system: UnitSystem): LimitBarPlan[] =>
  coilHeats
    .filter(({ partId }) => partId === speakerId)
    .map(({ riseK, temperatureC, limitC, isStated }) => {
      const of = isStated ? 'what its data sheet states' : 'usual values for its size, from memory, spread a factor 2';
      return {
        name: 'coil heat',
        about: `Temperature of the voice coil after long playing of music whose peaks are those of the sine at the set drive; by ${of}`,
        share: riseK / Math.max(limitC - startC, 1),
        amount: `${degrees(temperatureC, system)} of ${figureText(limitC, 'temperature', system)}`,
        where: isStated ? 'with music' : '(usual values)',
      };
    });

function openingBars(speakerId: string, figures: KeyFigures, project: Project, at: At): LimitBarPlan[] {
  const { mounts, ports, passiveRadiators, lines } = project.enclosure;
  const mount = mounts.find(({ partId }) => partId === speakerId);
  const chambers = [mount?.chamberId, mount?.frontChamberId];
  const isNear = (opening: { readonly chamberId: string }) => chambers.includes(opening.chamberId);
  const numbered = <T extends { readonly id: string }>(word: string, all: readonly T[], { id }: T) =>
    all.length > 1 ? `${word} ${all.findIndex((one) => one.id === id) + 1}` : word;
  return [
    ...passiveRadiators.filter(isNear).flatMap((radiator) => {
      const travel = figures.radiatorExcursions.find(({ id }) => id === radiator.id);
      if (!travel) return [];
      const called = thingName('radiator', radiator.id, project);
      const about = `Excursion of the passive radiator “${called}” at the set drive, one way, peak; of the most that it can`;
      return [{ name: numbered('radiator', passiveRadiators, radiator), about, ...travelled(travel, at) }];
    }),
    ...ports.filter(isNear).flatMap((port) => {
      const air = figures.portSpeeds.find(({ id }) => id === port.id);
      const name = ports.length > 1 ? `port air ${port.id}` : 'port air';
      return air ? [{ name, about: airAbout('the port'), ...streaming(air, at) }] : [];
    }),
    ...lines.filter(isNear).flatMap((line) => {
      const air = figures.lineSpeeds.find(({ id }) => id === line.id);
      const about = airAbout(`the mouth of the transmission line “${thingName('duct', line.id, project)}”`);
      return air ? [{ name: numbered('line air', lines, line), about, ...streaming(air, at) }] : [];
    }),
  ];
}

function amplifierBars(speakerId: string, figures: KeyFigures, project: Project, at: At): LimitBarPlan[] {
  if (figures.amplifierPeaks.length === 0) return [];
  const fed = fedBy(project.network.parts);
  const lowest = (amplifierId: string) =>
    waysInOrder(project).findLast((way) => fed.get(way.speakerId) === amplifierId)?.speakerId;
  return figures.amplifierPeaks
    .filter(({ id }) => lowest(id) === speakerId)
    .map(({ id, quantity, peak, limit, atHz }) => ({
      name: `${id} ${quantity}`,
      about: `Peak ${quantity} that the sine at the set drive asks of amplifier ${id}; of the most that it is stated to give`,
      share: peak / limit,
      amount: ofLimit(peak, limit, quantity === 'voltage' ? 'V' : 'A'),
      where: at(atHz),
    }));
}

const travelled = (
  { peakM, limitM, atHz }: { readonly peakM: number; readonly limitM: number | null; readonly atHz: number },
  at: At,
) => ({
  share: limitM === null ? null : peakM / limitM,
  amount: ofLimit(peakM * 1e3, limitM === null ? null : limitM * 1e3, 'mm'),
  where: at(atHz),
});

const airAbout = (where: string) =>
  `Speed of the air in ${where} at the set drive, mean over its cross-section, peak; the guide value for its ends is not a limit (from memory)`;

const streaming = ({ peakMPerS, loudMPerS, atHz }: KeyFigures['lineSpeeds'][number], at: At) => ({
  share: peakMPerS / loudMPerS,
  amount: `${short(peakMPerS)} m/s, guide ${short(loudMPerS)}`,
  where: at(atHz),
});

const short = (value: number) =>
  value >= 10 ? value.toFixed(0) : value >= 0.095 ? value.toFixed(1) : value.toFixed(2);

/** Whole degrees without their unit, which stands behind the limit. */
const degrees = (temperatureC: number, system: UnitSystem) =>
  (system === 'imperial' ? temperatureC * 1.8 + 32 : temperatureC).toFixed(0);

function ofLimit(value: number, limit: number | null, unit: string): string {
  return limit === null ? `${short(value)} ${unit}, no limit` : `${short(value)} of ${short(limit)} ${unit}`;
}
