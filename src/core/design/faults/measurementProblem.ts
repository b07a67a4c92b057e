import { type Problem, problem } from '../../messages/problem.ts';
import type { Measurement } from './nextMeasurement.ts';

/** A proposed measurement as a record that `word` puts into a sentence. */
export function measurementProblem(measurement: Measurement): Problem {
  const place = { kind: 'part', id: measurement.partId } as const;
  switch (measurement.kind) {
    case 'driver-unplugged':
      return problem('faults.measure-driver-unplugged', place);
    case 'at-driver':
      return problem('faults.measure-at-driver', place);
    case 'link-off':
      return problem('faults.measure-link-off', place);
    case 'near-field':
      return problem('faults.measure-near-field', place);
    case 'cone-direction':
      return problem('faults.measure-cone-direction', place);
    case 'part-with-meter':
      return problem('faults.measure-part-with-meter', place);
    case 'continuity':
      return problem('faults.measure-continuity', place, { node: measurement.node });
  }
}
