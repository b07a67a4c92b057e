import { type Result, succeed } from '../../messages/problem.ts';
import { type Cabinet, WALLS } from './cabinet.ts';
import { innerPanels } from './innerPanels.ts';
import type { Panel } from './panel.ts';
import { readCabinet } from './readCabinet.ts';
import { wallPanel } from './wallPanel.ts';

/**
 * Every board of a cabinet at its finished size, joints included: six walls, then dividers, braces and boards of slot ports.
 *
 * In m; exact for butt joints, mitres and rebates, leaning fronts and trapezoids (rebates on square edges alone). Panels tile the
 * wood without overlap: their `woodM3` is outer less inner volume. Returns problems for joints that leave a corner open and for sizes or
 * places that cannot be. Source: solid geometry (see `wallSpaces`).
 *
 * Example: panelsOf(cabinet) of an 18 mm box, 250 mm wide outside, whose top runs through: its left side is 36 mm lower than the box.
 */
export function panelsOf(cabinet: Cabinet): Result<readonly Panel[]> {
  const read = readCabinet(cabinet);
  if (!read.ok) return read;
  const { shell, spaces } = read.value;
  return succeed([...WALLS.map((wall) => wallPanel(cabinet, shell, wall)), ...innerPanels(cabinet, shell, spaces)]);
}
