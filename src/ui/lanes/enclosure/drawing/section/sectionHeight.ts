import type { Enclosure } from '../../../../../core/document/schema.ts';
import type { Selection } from '../../../../../state/workbench.ts';
import { sideChambers } from '../../sideChambers.ts';
import { driverSeat } from '../shape/driverSeat.ts';

/** The height of the level cut: through what is picked, through the middle of a picked chamber, else at half height; m. */
export function sectionHeight(enclosure: Enclosure, selection: Selection): number {
  const half = enclosure.heightM / 2;
  if (selection === null) return half;
  const { kind, id } = selection;
  if (kind === 'speaker') {
    const mount = enclosure.mounts.find(({ partId }) => partId === id);
    if (!mount) return half;
    const seat = driverSeat(mount, enclosure);
    return seat.kind === 'front' ? mount.yM : seat.upM;
  }
  if (kind === 'port') return enclosure.ports.find((port) => port.id === id)?.yM ?? half;
  if (kind === 'radiator') return enclosure.passiveRadiators.find((one) => one.id === id)?.yM ?? half;
  if (kind === 'duct') {
    const end = enclosure.lines.find((line) => line.id === id)?.end;
    return end?.kind === 'open' ? end.yM : half;
  }
  const chamber = kind === 'chamber' ? sideChambers(enclosure).find((one) => one.id === id) : undefined;
  return chamber ? (chamber.bottomM + chamber.topM) / 2 : half;
}
