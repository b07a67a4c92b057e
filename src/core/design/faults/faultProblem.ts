import { type Finding, type Place, type ProblemValues, problem } from '../../messages/problem.ts';
import type { SpeakerModel } from '../../speaker/model.ts';
import type { Fault } from './fault.ts';
import type { FittedValue } from './faultReport.ts';

/** A suspected fault as a finding that `word` puts into a sentence. */
export function faultProblem(fault: Fault, fitted: FittedValue | null, model: SpeakerModel): Finding {
  const values: Record<string, string | number> = {};
  if (fitted !== null) {
    values.value = fitted.value;
    values.spread = fitted.spread;
    values.quantity = fitted.name;
    if (fitted.nominal !== null) values.nominal = fitted.nominal;
  }
  const found = (code: string, place: Place, more: ProblemValues = {}): Finding => ({
    ...problem(code, place, { ...values, ...more }),
    severity: 'warning',
  });
  const part = (id: string): Place => ({ kind: 'part', id });
  switch (fault.kind) {
    case 'part-open':
      return found('faults.part-open', part(fault.partId));
    case 'part-short':
      return found('faults.part-short', part(fault.partId));
    case 'part-value':
      return found('faults.part-value', part(fault.partId));
    case 'part-decade': {
      const { kind } = model.parts.find(({ id }) => id === fault.partId)!;
      return found('faults.part-decade', part(fault.partId), { factor: fault.factor, part: kind });
    }
    case 'exchanged':
      return found('faults.exchanged', part(fault.partIds[0]), { other: fault.partIds[1] });
    case 'wrong-node': {
      const { nodes } = model.parts.find(({ id }) => id === fault.partId)!;
      return found('faults.wrong-node', part(fault.partId), { node: fault.node, from: nodes[fault.end] });
    }
    case 'link-missing':
      return found('faults.link-missing', part(fault.partId));
    case 'driver-open':
      return found('faults.driver-open', part(fault.partId));
    case 'driver-reversed':
      return found('faults.driver-reversed', part(fault.partId));
    case 'driver-resonance':
      return found('faults.driver-resonance', part(fault.partId));
    case 'leak':
      return found('faults.leak', { kind: 'chamber', id: fault.chamberId });
    case 'port-blocked':
      return found('faults.port-blocked', { kind: 'port', id: fault.portId });
    case 'port-length':
      return found('faults.port-length', { kind: 'port', id: fault.portId });
    case 'cable':
      return found('faults.cable', { kind: 'document' });
  }
}
