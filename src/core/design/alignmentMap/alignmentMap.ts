import type { AirProperties } from '../../acoustics/airProperties.ts';
import type { DriverParameters } from '../../acoustics/driver/driverParameters.ts';
import { helmholtzNeckM } from '../../acoustics/port/helmholtz.ts';
import { type PortGeometry, portEndCorrectionsM } from '../../acoustics/port/portEffectiveLength.ts';
import { portSectionM2 } from '../../acoustics/port/portShape.ts';
import type { PortGroup } from '../../acoustics/port/portTuning.ts';
import { fail, problem, type Result, succeed } from '../../messages/problem.ts';
import { drivenDriver } from './drivenDriver.ts';
import { lossesAtTuning, type MapLosses } from './mapLosses.ts';
import { ventedFigures } from './ventedFigures.ts';

export interface MapInput {
  readonly driver: DriverParameters;
  /** Equal drivers in the chamber on the same voltage. */
  readonly alike: number;
  readonly losses: MapLosses;
  readonly air: AirProperties;
  /** At the amplifier, V rms. */
  readonly driveV: number;
  /** Between amplifier and coil: output resistance, cable, resistance of a crossover coil. */
  readonly seriesOhm: number;
  /** The ports as they would be cut, without their length. */
  readonly port: Omit<PortGeometry, 'lengthM'> & PortGroup;
  /** Apparent volumes, ascending. */
  readonly volumesM3: Float64Array;
  readonly tuningsHz: Float64Array;
}

/** One number per box, row by row: volume `i`, tuning `j` at `i * tunings + j`. Where `masked` is 1 there is none and `values` holds 0. */
export interface MapGrid {
  readonly values: Float64Array;
  readonly masked: Uint8Array;
}

export interface AlignmentMap {
  readonly volumesM3: Float64Array;
  readonly tuningsHz: Float64Array;
  /** −3 dB re the pass band. */
  readonly cutOffHz: MapGrid;
  readonly rippleDb: MapGrid;
  /** Greatest at and above the cut-off at the drive, one way, peak. */
  readonly excursionPeakM: MapGrid;
  /** Length of each port; masked where even no length would tune so high. */
  readonly portLengthM: MapGrid;
  /** Greatest from 20 Hz upwards at the drive, peak; masked where there is no such port. */
  readonly portSpeedPeakMPerS: MapGrid;
}

/** Port speed counts from here, as in the key figures: what programme can hold. */
const LOWEST_HZ = 20;
const MOST_BOXES = 1e6;

/**
 * Every vented box of a driver at once: cut-off, ripple, excursion, port length and port speed over volume and tuning.
 *
 * Exact for a lumped box with leakage, absorption and port losses (`ventedFigures`, with its assumptions: no coil inductance,
 * the port a mass). Port lengths as `portLengthForTuning`. Numbers of the driver, the port or the axes that are not above 0 are the Problem
 * `design.map-unreadable`; a box whose numbers overflow is masked.
 *
 * Example: alignmentMap({ driver, alike: 1, losses, air, driveV: 2.83, seriesOhm: 0.1, port, volumesM3, tuningsHz })
 */
export const alignmentMap = (input: MapInput): Result<AlignmentMap> => {
  const { volumesM3, tuningsHz, port, losses, air } = input;
  const driver = drivenDriver(input.driver, input);
  const areaM2 = port.count * portSectionM2(port.shape);
  const endsM = portEndCorrectionsM(port, port.neighbourDistancesM);
  const qualities = [losses.leak, losses.absorption, losses.port].flatMap((loss) =>
    loss === null ? [] : [loss.q, loss.atHz ?? 1],
  );
  const asked = volumesM3.length * tuningsHz.length;
  const readable = [...volumesM3, ...tuningsHz, ...qualities, areaM2, endsM, air.densityKgPerM3, air.soundSpeedMPerS];
  if (driver === null || asked > MOST_BOXES || !readable.every((value) => value > 0 && Number.isFinite(value))) {
    return fail(problem('design.map-unreadable', { kind: 'driver' }));
  }
  const grid = (): MapGrid => ({ values: new Float64Array(asked), masked: new Uint8Array(asked) });
  const map: AlignmentMap = {
    volumesM3,
    tuningsHz,
    cutOffHz: grid(),
    rippleDb: grid(),
    excursionPeakM: grid(),
    portLengthM: grid(),
    portSpeedPeakMPerS: grid(),
  };
  for (let j = 0; j < tuningsHz.length; j++) {
    const tuningHz = tuningsHz[j]!;
    const h = tuningHz / driver.fsHz;
    const atTuning = lossesAtTuning(losses, tuningHz);
    const speedUnit = (2 * Math.PI * tuningHz * driver.restExcursionPeakM * driver.sdM2) / areaM2;
    for (let i = 0; i < volumesM3.length; i++) {
      const volumeM3 = volumesM3[i]!;
      const cell = i * tuningsHz.length + j;
      const box = { h, alpha: driver.vasM3 / volumeM3, qt: driver.qts, losses: atTuning };
      const figures = ventedFigures(box, LOWEST_HZ / tuningHz);
      const lengthM = helmholtzNeckM({ areaM2, tuningHz, volumeM3 }, air.soundSpeedMPerS) - endsM;
      const fits = lengthM >= 0;
      put(map.cutOffHz, cell, figures === null ? null : figures.cutOffOverTuning * tuningHz);
      put(map.rippleDb, cell, figures === null ? null : figures.rippleDb);
      put(map.excursionPeakM, cell, figures === null ? null : figures.excursionRatio * driver.restExcursionPeakM);
      put(map.portLengthM, cell, fits ? lengthM : null);
      put(map.portSpeedPeakMPerS, cell, figures !== null && fits ? figures.portFlowRatio * speedUnit : null);
    }
  }
  return succeed(map);
};

const put = ({ values, masked }: MapGrid, cell: number, value: number | null): void => {
  if (value !== null && Number.isFinite(value)) values[cell] = value;
  else masked[cell] = 1;
};
