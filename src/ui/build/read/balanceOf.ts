import type { CabinetVolumes, Panel } from '../../../core/build/panels/index.ts';

/** Wood of the walls, dividers and braces, and all that is between them, against the outer volume; m³. */
export interface Balance {
  readonly woodM3: number;
  readonly airM3: number;
  /** Drivers, ports with their boards and bore, crossover and whatever else stands in the air. */
  readonly contentsM3: number;
  readonly outerM3: number;
  /** What the three add up to, less the outer volume, as a share of it. */
  readonly offShare: number;
}

/** Adds the boards of the cut list to the air of the volumes: two computations that must meet in the outer size. */
export function balanceOf(panels: readonly Panel[], { outerM3, chambers }: CabinetVolumes): Balance {
  const boards = panels.filter(({ kind }) => kind !== 'port-board');
  const woodM3 = boards.reduce((sum, panel) => sum + panel.woodM3, 0);
  const airM3 = chambers.reduce((sum, { netM3 }) => sum + netM3, 0);
  const contentsM3 = chambers.reduce((sum, c) => sum + c.driversM3 + c.portsM3 + c.contentsM3 + c.statedBracesM3, 0);
  return { woodM3, airM3, contentsM3, outerM3, offShare: (woodM3 + airM3 + contentsM3) / outerM3 - 1 };
}
