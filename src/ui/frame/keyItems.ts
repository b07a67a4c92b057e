import type { KeyFigures } from '../../core/design/evaluation.ts';
import { PORT_SPEED_LOUD_M_PER_S } from '../../core/design/findings/portSpeed.ts';
import type { Project } from '../../core/document/schema.ts';
import type { UnitSystem } from '../../core/units/quantityKind.ts';
import type { Selection } from '../../state/workbench.ts';
import { radiationWords } from '../radiationWords.ts';
import { waysInOrder } from '../waysInOrder.ts';
import {
  figure,
  type WhyInput,
  type WhyNote,
  whyLeastImpedance,
  whyLowEnd,
  whyPortLength,
  whyQtc,
  whySensitivity,
  whySpread,
  whyTuning,
} from './why/index.ts';

/** One number of the strip: the number, what it is in words, under which conditions, what it passes, and what explains it. */
export interface KeyItem {
  readonly id: string;
  readonly value: string;
  readonly words: string;
  /** What exactly it is and under which conditions. */
  readonly about: string;
  /** What it passes; null where it passes nothing. */
  readonly over: string | null;
  /** The notes that explain it, one under the other; empty where it explains itself. */
  readonly why: readonly ((input: WhyInput) => WhyNote | null)[];
  /** Where it comes from; null for the whole. */
  readonly place: Selection;
}

/** The key figures as the strip shows them, in the order of the questions: heard, load, motion, box. */
export function keyItems(figures: KeyFigures, project: Project, units: UnitSystem): readonly KeyItem[] {
  const items: KeyItem[] = [];
  const { driveV } = project.chain;
  const view = radiationWords[project.listening.radiation];
  const place = `where you listen, ${view}`;
  const drive = `at the set drive of ${figure(driveV, 'voltage')} rms`;
  const add = (id: string, value: string, words: string, about: string, more: Partial<KeyItem> = {}): void => {
    items.push({ id, value, words, about, over: null, why: [], place: null, ...more });
  };
  if (figures.lowMinus3Hz !== null) {
    const about = `Where the sum falls 3 dB below its own mean level from 200 Hz to 2 kHz, going down; ${place}`;
    add('low', figure(figures.lowMinus3Hz, 'frequency'), '−3 dB', about, { why: [whyLowEnd] });
  }
  if (figures.sensitivityDbSpl !== null) {
    const about = `Mean level from 200 Hz to 2 kHz at 1 m for 2.83 V rms, dB re 20 µPa, ${view}`;
    const value = `${figures.sensitivityDbSpl.toFixed(1)} dB`;
    add('sensitivity', value, 'at 1 m, 2.83 V', about, { why: [whySensitivity] });
  }
  if (figures.rippleDb !== null) {
    const about = `Half of greatest less least level of the sum from 200 Hz to 10 kHz: ± re the middle between them; ${place}`;
    add('ripple', `±${figures.rippleDb.toFixed(1)} dB`, '200 Hz–10 kHz', about, { why: [whySpread] });
  }
  const least = figures.leastImpedance;
  if (least) {
    const rated = project.chain.amplifiers.find(({ id }) => id === least.amplifierId)?.ratedMinimumLoadOhm ?? 0;
    const about = 'Least magnitude of the impedance at the amplifier’s terminals from 20 Hz to 20 kHz';
    add('impedance', figure(least.ohm, 'resistance'), 'least impedance', about, {
      over: least.ohm < rated ? 'below the amplifier’s rated minimum' : null,
      why: [whyLeastImpedance],
    });
  }
  const excursion = greatestShare(figures);
  if (excursion?.limitM) {
    const way = waysInOrder(project).find(({ speakerId }) => speakerId === excursion.partId)?.name ?? excursion.partId;
    const value = `${millimetres(excursion.peakM)} of ${millimetres(excursion.limitM)} mm`;
    const about = `Excursion ${drive}: how far the cone moves, one way, peak; of its linear excursion Xmax`;
    add('travel', value, `${way} excursion, peak`, about, {
      over: excursion.peakM > excursion.limitM ? 'passes its limit' : null,
      place: { kind: 'speaker', id: excursion.partId },
    });
  }
  for (const port of figures.portSpeeds) {
    const words = figures.portSpeeds.length > 1 ? `air in ${port.id}, peak` : 'port air, peak';
    const value = figure(port.peakMPerS, 'speed', units, 2);
    const about = `Speed of the air ${drive}, mean over the port’s cross-section, peak; guide ${PORT_SPEED_LOUD_M_PER_S} m/s (from memory, not a limit)`;
    add(`air:${port.id}`, value, words, about, {
      over: port.peakMPerS > PORT_SPEED_LOUD_M_PER_S ? 'passes the guide value' : null,
      place: { kind: 'port', id: port.id },
    });
  }
  for (const chamber of figures.chambers) {
    const name = project.enclosure.chambers.find(({ id }) => id === chamber.id)?.name ?? chamber.id;
    const at: Selection = { kind: 'chamber', id: chamber.id };
    const alike = figures.chambers.filter((other) => (other.tuningHz === null) === (chamber.tuningHz === null));
    const named = (words: string): string => (alike.length > 1 ? `${words}, ${name}` : words);
    if (chamber.tuningHz !== null) {
      const ports = project.enclosure.ports.filter((port) => port.chamberId === chamber.id);
      const why = [
        (input: WhyInput) => whyTuning(input, chamber.id),
        ...ports.map((port) => (input: WhyInput) => whyPortLength(input, port.id)),
      ];
      add(
        `tuning:${chamber.id}`,
        figure(chamber.tuningHz, 'frequency'),
        named('tuning'),
        'Where the air of the chamber and its ports swing together',
        {
          why,
          place: at,
        },
      );
    }
    if (chamber.sealed !== null) {
      const why = [(input: WhyInput) => whyQtc(input, chamber.id)];
      const about = 'Total quality factor of the driver in its closed chamber';
      add(`qtc:${chamber.id}`, chamber.sealed.qtc.toFixed(2), named('Qtc'), about, { why, place: at });
    }
  }
  return items;
}

const millimetres = (metres: number): string => String(Number((metres * 1000).toPrecision(2)));

function greatestShare(figures: KeyFigures): KeyFigures['excursions'][number] | null {
  const share = (one: KeyFigures['excursions'][number]): number => (one.limitM ? one.peakM / one.limitM : 0);
  return figures.excursions.reduce<KeyFigures['excursions'][number] | null>(
    (most, one) => (one.limitM !== null && (most === null || share(one) > share(most)) ? one : most),
    null,
  );
}
