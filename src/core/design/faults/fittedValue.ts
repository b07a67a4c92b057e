import type { SpeakerModel } from '../../speaker/model.ts';
import { portBranch } from '../../speaker/nodeNames.ts';
import type { Candidate } from './candidate.ts';
import type { Fault } from './fault.ts';
import type { FittedValue } from './faultReport.ts';
import { mainValue } from './healthyUnknowns.ts';
import { cableOhmOf, leakQOf } from './hypothesis.ts';
import { unknownKey } from './unknown.ts';

/** How large what is wrong was found to be, in SI units; null for faults that have no size. */
export function fittedValue(fault: Fault, { hypothesis, fit }: Candidate, model: SpeakerModel): FittedValue | null {
  const of = (key: string): { readonly log: number; readonly spread: number } => {
    const k = hypothesis.unknowns.findIndex((unknown) => unknownKey(unknown) === key);
    return { log: fit.logs[k]!, spread: fit.sdLogs[k]! };
  };
  switch (fault.kind) {
    case 'part-value': {
      const part = model.parts.find(({ id }) => id === fault.partId)!;
      const name = mainValue(part);
      if (name === null || name === 'dcrOhm') return null;
      const { log, spread } = of(`part ${fault.partId} ${name}`);
      const nominal = Number(new Map(Object.entries(part)).get(name));
      return { name, value: nominal * Math.exp(log), nominal, spread };
    }
    case 'driver-resonance': {
      const { mmsKg, cmsMPerN } = model.speakers.find(({ partId }) => partId === fault.partId)!.parameters;
      const nominal = 1 / (2 * Math.PI * Math.sqrt(mmsKg * cmsMPerN));
      const { log, spread } = of(`driver ${fault.partId} compliance`);
      return { name: 'resonanceHz', value: nominal * Math.exp(-log / 2), nominal, spread: spread / 2 };
    }
    case 'leak': {
      const { log, spread } = of(`leak ${fault.chamberId}`);
      return { name: 'leakQ', value: leakQOf(log), nominal: null, spread };
    }
    case 'cable': {
      const { log, spread } = of('cable');
      return { name: 'cableOhm', value: cableOhmOf(log), nominal: 0, spread };
    }
    case 'port-length': {
      const { log, spread } = of(`air ${portBranch(fault.portId)}`);
      return { name: 'portLengthRatio', value: Math.exp(-log), nominal: 1, spread };
    }
    default:
      return null;
  }
}
