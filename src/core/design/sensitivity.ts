import type { Project } from '../document/schema.ts';
import { levelsDbSpl } from '../speaker/complexCurve.ts';
import type { PathMemory } from '../speaker/radiationPath.ts';
import { readModel } from '../speaker/readModel.ts';
import { simulate } from '../speaker/simulate.ts';
import { MEAN_FROM_HZ, MEAN_TO_HZ, meanLevelDb } from './levelFigures.ts';
import { sweepGrid } from './sweepGrid.ts';

const POINTS = 48;

/**
 * Mean level from 200 Hz to 2 kHz at 1 m on axis at the highest driver's height for 2.83 V at every channel, dB re 20 µPa;
 * null where it cannot be computed. In the set view (half space, full space or baffle step).
 *
 * `paths` lends the paths of an earlier run. Convention of the project; IEC 60268-5 states characteristic sensitivity for 1 W into the rated impedance instead.
 */
export function sensitivityDbSpl(project: Project, paths: PathMemory = new Map()): number | null {
  const { mounts } = project.enclosure;
  const heightM = mounts.reduce((highest, mount) => Math.max(highest, mount.yM), 0);
  const listening = {
    ...project.listening,
    distanceM: 1,
    heightM: project.listening.standHeightM + heightM,
    horizontalDeg: 0,
    verticalDeg: 0,
  };
  const model = readModel({ ...project, listening, chain: { ...project.chain, driveV: 2.83 } }, paths);
  if (!model.ok) return null;
  const frequenciesHz = sweepGrid(MEAN_FROM_HZ, MEAN_TO_HZ, POINTS);
  const simulation = simulate(model.value.model, frequenciesHz);
  return simulation.ok ? meanLevelDb(levelsDbSpl(simulation.value.sum), frequenciesHz) : null;
}
