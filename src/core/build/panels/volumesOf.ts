import { fail, problem, type Result, succeed } from '../../messages/problem.ts';
import { volumeOf } from '../solid/index.ts';
import { braceWoodM3 } from './braceSolid.ts';
import type { Cabinet } from './cabinet.ts';
import { portSpaceM3 } from './portSpace.ts';
import { readCabinet } from './readCabinet.ts';

export interface WoodenChamber {
  readonly chamberId: string;
  readonly grossM3: number;
  /** All braces, and of them those of which only the volume is known. */
  readonly bracesM3: number;
  readonly statedBracesM3: number;
  readonly driversM3: number;
  readonly portsM3: number;
  readonly contentsM3: number;
  readonly netM3: number;
}
export interface CabinetVolumes {
  readonly outerM3: number;
  /** Between the inner faces, nothing subtracted. */
  readonly innerM3: number;
  readonly dividersM3: number;
  readonly chambers: readonly WoodenChamber[];
}

/**
 * Outer, inner and net volumes, m³, chamber by chamber: gross less braces, drivers, ports (behind the wall they go through) and
 * contents. Air in the driver cut-outs is not counted. Returns what `panelsOf` does, or `build.no-air-left`.
 *
 * Example: volumesOf(cabinet).value.chambers[0].netM3.
 */
export function volumesOf(cabinet: Cabinet): Result<CabinetVolumes> {
  const read = readCabinet(cabinet);
  if (!read.ok) return read;
  const { shell, spaces } = read.value;
  const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
  const chambers = [...spaces.chambers].map(([chamberId, space]): WoodenChamber => {
    const here = <T extends { readonly chamberId: string }>(list: readonly T[]) =>
      list.filter((one) => one.chamberId === chamberId);
    const grossM3 = volumeOf(space);
    const contents = here(cabinet.contents);
    const volumeWhere = (isBrace: boolean): number =>
      sum(contents.flatMap((one) => ((one.isBrace ?? false) === isBrace ? [one.volumeM3] : [])));
    const statedBracesM3 = volumeWhere(true);
    const bracesM3 = sum(here(cabinet.braces).map((brace) => braceWoodM3(brace, space))) + statedBracesM3;
    const driversM3 = sum(here(cabinet.drivers).map(({ displacedM3 }) => displacedM3));
    const portsM3 = sum(here(cabinet.ports).map((port) => portSpaceM3(port, cabinet.thicknessM[port.at.wall])));
    const contentsM3 = volumeWhere(false);
    const netM3 = grossM3 - bracesM3 - driversM3 - portsM3 - contentsM3;
    return { chamberId, grossM3, bracesM3, statedBracesM3, driversM3, portsM3, contentsM3, netM3 };
  });
  const airless = chambers.filter(({ netM3 }) => !(netM3 > 0));
  if (airless.length > 0)
    return fail(
      ...airless.map(({ chamberId, grossM3, netM3 }) =>
        problem(
          'build.no-air-left',
          { kind: 'chamber', id: chamberId },
          { name: chamberId, grossM3, takenM3: grossM3 - netM3 },
        ),
      ),
    );
  return succeed({
    outerM3: shell.outerVolumeM3,
    innerM3: shell.innerVolumeM3,
    dividersM3: sum([...spaces.dividers.values()].map(volumeOf)),
    chambers,
  });
}
