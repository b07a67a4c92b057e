import { type Result, succeed } from '../../messages/problem.ts';
import type { Cabinet } from '../panels/cabinet.ts';
import { readCabinet } from '../panels/readCabinet.ts';
import type { Interference } from './interference.ts';
import { inwardFaults } from './inwardFaults.ts';
import { surfaceFaults } from './surfaceFaults.ts';

/**
 * Everything in a cabinet that gets in the way of something else: cut-outs on each wall, drivers and ports inside.
 *
 * `webM`: least wood to be left between two cut-outs, and between a cut-out and the inner edge of its panel. Distances in m; drivers are a
 * cone and a cylinder, parts on different walls are held against boxes, on the safe side. A port is straight. Returns what `panelsOf` does.
 *
 * Example: interferences(cabinet, 0.01).value[0] is { code: 'build.magnet-hits-back', haveM: 0.15, needM: 0.17, … }.
 */
export function interferences(cabinet: Cabinet, webM: number): Result<readonly Interference[]> {
  const read = readCabinet(cabinet);
  if (!read.ok) return read;
  const { shell, spaces } = read.value;
  return succeed([...surfaceFaults(cabinet, shell, spaces, webM), ...inwardFaults(cabinet, shell, spaces)]);
}
