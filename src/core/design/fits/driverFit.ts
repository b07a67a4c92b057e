import type { Finding } from '../../messages/problem.ts';
import type { CoilRanking } from './coilChoice.ts';
import type { CoilForm, EnteredForm } from './coilForms.ts';
import type { DriverResonance } from './driverResonance.ts';
import type { FittedCoil } from './fittedCoil.ts';
import type { Channel } from './impedanceFit.ts';

export interface DriverFitOptions {
  /** 'choose': the form that Schwarz's criterion prefers among those that a driver can hold. */
  readonly coil: 'choose' | EnteredForm;
  /** Resistance of the leads in the sweep, both ways, 0 where it was taken out; null: not known. */
  readonly leadOhm: number | null;
  /** The coil's resistance by an ohmmeter, leads taken out; null: not measured. */
  readonly dcOhm: number | null;
}

export interface DriverFit extends DriverResonance {
  readonly coil: FittedCoil & { readonly form: EnteredForm; readonly by: 'criterion' | 'wish' };
  /** All forms tried, the best first, and the one that resonance and Re come from: the best, whatever was wished for. */
  readonly ranking: readonly CoilRanking[];
  readonly resonanceWith: CoilForm;
  /** The coil in that form. */
  readonly bestCoil: FittedCoil;
  /** The stretch that resonance and Re come from: narrower than the sweep where no coil fits all of it. */
  readonly bandHz: readonly [number, number];
  /** The model over the sweep and what is left, ln|Z| (model less measured) and, where there is one, phase in radians. */
  readonly model: { readonly magnitudesOhm: Float64Array; readonly phasesRad: Float64Array };
  readonly channels: readonly Channel[];
  readonly iterations: number;
  readonly findings: readonly Finding[];
}
