import type { KeyFigures } from '../../core/design/evaluation.ts';
import type { Project } from '../../core/document/schema.ts';
import type { UnitSystem } from '../../core/units/quantityKind.ts';
import type { Selection } from '../../state/workbench.ts';
import { waysInOrder } from '../waysInOrder.ts';
import {
  figure,
  type WhyInput,
  type WhyNote,
  whyLeastImpedance,
  whyPortLength,
  whyQtc,
  whySensitivity,
  whyTuning,
} from './why/index.ts';

/** One number of the strip: the number, what it is in words, whether it passes a limit, and what explains it. */
export interface KeyItem {
  readonly id: string;
  readonly value: string;
  readonly words: string;
  readonly over: boolean;
  /** The notes that explain it, one under the other; empty where it explains itself. */
  readonly why: readonly ((input: WhyInput) => WhyNote | null)[];
  /** Where it comes from; null for the whole. */
  readonly place: Selection;
}

/** The key figures as the strip shows them, in the order of the questions: heard, load, motion, box. */
export function keyItems(figures: KeyFigures, project: Project, units: UnitSystem): readonly KeyItem[] {
  const items: KeyItem[] = [];
  const add = (id: string, value: string, words: string, more: Partial<KeyItem> = {}): void => {
    items.push({ id, value, words, over: false, why: [], place: null, ...more });
  };
  if (figures.lowMinus3Hz !== null) add('low', figure(figures.lowMinus3Hz, 'frequency'), '−3 dB');
  if (figures.sensitivityDbSpl !== null) {
    add('sensitivity', `${figures.sensitivityDbSpl.toFixed(1)} dB`, 'at 1 m, 2.83 V', { why: [whySensitivity] });
  }
  if (figures.rippleDb !== null) add('ripple', `±${figures.rippleDb.toFixed(1)} dB`, '200 Hz to 10 kHz');
  const least = figures.leastImpedance;
  if (least) {
    const rated = project.chain.amplifiers.find(({ id }) => id === least.amplifierId)?.ratedMinimumLoadOhm ?? 0;
    add('impedance', figure(least.ohm, 'resistance'), 'least impedance', {
      over: least.ohm < rated,
      why: [whyLeastImpedance],
    });
  }
  const travel = mostTravelled(figures);
  if (travel?.limitM) {
    const way = waysInOrder(project).find(({ speakerId }) => speakerId === travel.partId)?.name ?? travel.partId;
    const value = `${millimetres(travel.peakM)} of ${millimetres(travel.limitM)} mm`;
    add('travel', value, `${way} travel`, {
      over: travel.peakM > travel.limitM,
      place: { kind: 'speaker', id: travel.partId },
    });
  }
  for (const port of figures.portSpeeds) {
    const words = figures.portSpeeds.length > 1 ? `air in ${port.id}` : 'port air';
    const value = figure(port.peakMPerS, 'speed', units, 2);
    add(`air:${port.id}`, value, words, { over: port.peakMPerS > 17, place: { kind: 'port', id: port.id } });
  }
  for (const chamber of figures.chambers) {
    const name = project.enclosure.chambers.find(({ id }) => id === chamber.id)?.name ?? chamber.id;
    const place: Selection = { kind: 'chamber', id: chamber.id };
    const alike = figures.chambers.filter((other) => (other.tuningHz === null) === (chamber.tuningHz === null));
    const named = (words: string): string => (alike.length > 1 ? `${words}, ${name}` : words);
    if (chamber.tuningHz !== null) {
      const ports = project.enclosure.ports.filter((port) => port.chamberId === chamber.id);
      const why = [
        (input: WhyInput) => whyTuning(input, chamber.id),
        ...ports.map((port) => (input: WhyInput) => whyPortLength(input, port.id)),
      ];
      add(`tuning:${chamber.id}`, figure(chamber.tuningHz, 'frequency'), named('tuning'), { why, place });
    }
    if (chamber.sealed !== null) {
      const why = [(input: WhyInput) => whyQtc(input, chamber.id)];
      add(`qtc:${chamber.id}`, chamber.sealed.qtc.toFixed(2), named('Qtc'), { why, place });
    }
  }
  return items;
}

const millimetres = (metres: number): string => String(Number((metres * 1000).toPrecision(2)));

function mostTravelled(figures: KeyFigures): KeyFigures['excursions'][number] | null {
  const share = (one: KeyFigures['excursions'][number]): number => (one.limitM ? one.peakM / one.limitM : 0);
  return figures.excursions.reduce<KeyFigures['excursions'][number] | null>(
    (most, one) => (one.limitM !== null && (most === null || share(one) > share(most)) ? one : most),
    null,
  );
}
