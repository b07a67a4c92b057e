import type { LimitedCurve, LimitKind } from '../../../core/design/limits/index.ts';
import type { Project } from '../../../core/document/schema.ts';
import type { LineStyle } from '../../../plot/index.ts';
import { outletLook } from './outlets.ts';
import { wayOf } from './viewCurves.ts';

/** Besides its colour each kind of limit has a dash of its own. */
const DASHES: Readonly<Record<LimitKind, readonly number[]>> = {
  excursion: [],
  'radiator-excursion': [1.25, 2.5],
  'port-speed': [1.25, 1.25],
  'mouth-speed': [3, 1.25, 1.25, 1.25],
  'coil-heat': [3, 1.25],
  'rated-power': [6, 1.25],
  'amplifier-voltage': [6, 1.25, 1.25, 1.25],
  'amplifier-current': [4, 1.25, 1.25, 1.25, 1.25, 1.25],
};

/** A limit in words, with its style in the plot and its lane: "woofer excursion", "air in port P1", "V1 voltage". */
export function limitLook(
  project: Project,
  { kind, id }: Pick<LimitedCurve, 'kind' | 'id'>,
): { readonly name: string; readonly style: LineStyle; readonly speakerId: string | null } {
  const dash = DASHES[kind];
  const drawn = (colour: string): LineStyle => ({ colour, dash, widthPx: 2.5 });
  switch (kind) {
    case 'excursion':
    case 'coil-heat':
    case 'rated-power': {
      const { name, style } = wayOf(project, id);
      const words = { excursion: 'excursion', 'coil-heat': 'coil heat', 'rated-power': 'rated power' }[kind];
      return { name: `${name} ${words}`, style: drawn(style.colour), speakerId: id };
    }
    case 'radiator-excursion':
    case 'port-speed':
    case 'mouth-speed': {
      const outlet = ({ 'radiator-excursion': 'radiator', 'port-speed': 'port', 'mouth-speed': 'line' } as const)[kind];
      const { name, style, speakerId } = outletLook(project, outlet, id);
      const words = kind === 'radiator-excursion' ? `${name} excursion` : `air in ${name}`;
      return { name: words, style: drawn(style.colour), speakerId };
    }
    default:
      return {
        name: `${id} ${kind === 'amplifier-voltage' ? 'voltage' : 'current'}`,
        style: drawn('--caution'),
        speakerId: null,
      };
  }
}
