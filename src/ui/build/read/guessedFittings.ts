import { cabinetOf } from '../../../core/build/document/cabinetOf.ts';
import type { Driver, Project } from '../../../core/document/schema.ts';

export type Fitting = NonNullable<Driver['fitting']>;

export interface GuessedFitting {
  /** What stands in for a sheet that says nothing; its screw circle lies midway between cut-out and rim. */
  readonly guess: Fitting;
  /** Fields of the driver's fitting that are not stated, or still what was guessed. */
  readonly open: ReadonlySet<keyof Fitting>;
}

const SAME_M = 1e-9;

/** For every driver that sits in a panel, by its id, what is guessed of its fitting. Empty where the cabinet cannot be read. */
export function guessedFittings(project: Project): ReadonlyMap<string, GuessedFitting> {
  const bare = cabinetOf({ ...project, drivers: project.drivers.map((driver) => ({ ...driver, fitting: null })) });
  const found = new Map<string, GuessedFitting>();
  if (!bare.ok) return found;
  for (const mounted of bare.value.cabinet.drivers) {
    const part = project.network.parts.find(({ id }) => id === mounted.id);
    const driver = part?.kind === 'speaker' ? project.drivers.find(({ id }) => id === part.driverId) : undefined;
    if (driver === undefined || found.has(driver.id)) continue;
    const guess: Fitting = {
      cutOutDiameterM: mounted.cutOutDiameterM,
      recessDepthM: 0,
      screwCircleM: (mounted.cutOutDiameterM + mounted.frameDiameterM) / 2,
      screwCount: 0,
      magnetDiameterM: mounted.magnetDiameterM,
    };
    found.set(driver.id, { guess, open: openFields(driver.fitting, guess) });
  }
  return found;
}

function openFields(fitting: Fitting | null, guess: Fitting): ReadonlySet<keyof Fitting> {
  const guessable = ['cutOutDiameterM', 'magnetDiameterM', 'screwCircleM'] as const;
  return new Set(guessable.filter((field) => fitting === null || Math.abs(fitting[field] - guess[field]) < SAME_M));
}
