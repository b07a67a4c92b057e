import type { Command } from '../../../../../../core/document/command.ts';
import { partitions } from '../../../sideChambers.ts';
import { onSide } from '../../cabinetDrawing.ts';
import { chain, secondRow } from './besideViews.ts';
import type { DimensionField, Drawn } from './dimensionField.ts';

/** Where the boards between the chambers are: one value moves the board with both bounds that meet at it. */
export function boardFields({ drawing, enclosure, typeScale }: Drawn): DimensionField[] {
  const side = drawing.side!;
  const nameOf = (id: string) => enclosure.chambers.find((chamber) => chamber.id === id)?.name || id;
  const bound = (id: string, changes: { topM?: number; bottomM?: number; depthM?: number }): Command => {
    const { volume } = enclosure.chambers.find((chamber) => chamber.id === id)!;
    if (volume.kind !== 'geometry') throw new Error('Only chambers with bounds have boards.');
    return { type: 'set-chamber', id, changes: { volume: { ...volume, ...changes } } };
  };
  return partitions(enclosure).map(({ below, above, behind, bottomM, topM, frontM }): DimensionField => {
    if (behind !== null) {
      const { volume } = enclosure.chambers.find((chamber) => chamber.id === behind)!;
      const value = volume.kind === 'geometry' ? (volume.depthM ?? 0) : 0;
      const place = { side, pxPerM: drawing.pxPerM };
      const [from, to] = [frontM - value, frontM].map((m) => onSide(place, m, 0).xPx) as [number, number];
      return {
        key: `depth ${behind}`,
        label: `Depth of the ${nameOf(behind)}`,
        kind: 'length',
        value,
        least: 0.01,
        command: (depthM) => bound(behind, { depthM }),
        places: [secondRow(drawing, from, to, typeScale)],
      };
    }
    const thick = topM - bottomM;
    const value = below === null ? topM : bottomM;
    return {
      key: `board ${below} ${above}`,
      label: below === null ? `Bottom of the ${nameOf(above!)}` : `Top of the ${nameOf(below)}`,
      kind: 'length',
      value,
      least: 0.01,
      greatest: enclosure.heightM,
      anchor: 'left',
      command: (next) => {
        const moved = [
          ...(below === null ? [] : [bound(below, { topM: next })]),
          ...(above === null ? [] : [bound(above, { bottomM: below === null ? next : next + thick })]),
        ];
        return moved.length === 1 ? moved[0]! : { type: 'together', commands: moved };
      },
      places: chain(drawing, value, typeScale),
    };
  });
}
