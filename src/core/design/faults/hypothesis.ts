import { chamberComplianceM3PerPa } from '../../acoustics/chamber.ts';
import type { Part } from '../../circuit/part.ts';
import type { SpeakerModel } from '../../speaker/model.ts';
import { airNode, portBranch } from '../../speaker/nodeNames.ts';
import type { Build, BuiltPart } from './build.ts';
import type { Fault } from './fault.ts';
import { mainValue } from './healthyUnknowns.ts';
import { type Unknown, unknownKey } from './unknown.ts';

/** A build with faults in it, and what a fit of it may move from where. */
export interface Hypothesis {
  /** None: a healthy build. */
  readonly faults: readonly Fault[];
  readonly build: Build;
  readonly unknowns: readonly Unknown[];
  /** Unknowns whose size is what is wrong, with the logarithms from which to start. */
  readonly wild: readonly { readonly key: string; readonly starts: readonly number[] }[];
}

/** How far what is wrong strays, in logarithms: a spread of 4.5 for parts, 1.5 for resonances, 3.3 for leaks and cables. */
const WILD_PART = 1.5;
const WILD_COMPLIANCE = 0.8;
const WILD_LOSS = 1.2;
const WILD_PORT = 0.5;
/** A leak and a cable that are worth speaking of. */
const LEAK_Q = 5;
const CABLE_OHM = 0.6;

/** Puts one more fault into a build; null where that cannot be, as for a part that is already out. */
export function withFault(base: Hypothesis, fault: Fault, model: SpeakerModel): Hypothesis | null {
  const { build } = base;
  const faults = [...base.faults, fault];
  const wild = (key: string, sdLog: number, starts: readonly number[], changed: Partial<Build> = {}): Hypothesis => ({
    faults,
    build: { ...build, ...changed },
    unknowns: base.unknowns.map((unknown) => (unknownKey(unknown) === key ? { ...unknown, sdLog } : unknown)),
    wild: [...base.wild, { key, starts }],
  });
  const changed = (change: Partial<Build>): Hypothesis => ({ ...base, faults, build: { ...build, ...change } });
  const partsWith = (partId: string, change: (built: BuiltPart) => BuiltPart): Hypothesis | null => {
    const built = build.parts.find(({ part }) => part.id === partId);
    if (built === undefined || built.state !== 'whole') return null;
    return changed({ parts: build.parts.map((other) => (other === built ? change(built) : other)) });
  };
  switch (fault.kind) {
    case 'part-open':
    case 'link-missing':
      return partsWith(fault.partId, (built) => ({ ...built, state: 'open' }));
    case 'part-short':
      return partsWith(fault.partId, (built) => ({ ...built, state: 'short' }));
    case 'part-decade':
      return partsWith(fault.partId, ({ part, state }) => ({ part: scaled(part, fault.factor), state }));
    case 'part-value': {
      const built = build.parts.find(({ part }) => part.id === fault.partId);
      const name = built && mainValue(built.part);
      if (!built || !name || built.state !== 'whole') return null;
      return wild(
        unknownKey({ kind: 'part', partId: fault.partId, name, sdLog: 0 }),
        WILD_PART,
        [0.5, -0.5, 1.6, -1.6, 3.2, -3.2],
      );
    }
    case 'exchanged':
      return exchanged(base, fault.partIds, faults);
    case 'wrong-node':
      return moved(base, fault, faults);
    case 'driver-open':
      return changed({
        drivers: build.drivers.map((d) => (d.partId === fault.partId ? { ...d, isOpen: true } : d)),
      });
    case 'driver-reversed':
      return changed({
        drivers: build.drivers.map((d) =>
          d.partId === fault.partId ? { ...d, nodes: [d.nodes[1], d.nodes[0]] as const } : d,
        ),
      });
    case 'driver-resonance': {
      const key = unknownKey({ kind: 'driver', partId: fault.partId, name: 'compliance', sdLog: 0 });
      return wild(key, WILD_COMPLIANCE, [0.5, -0.5, 1.2, -1.2]);
    }
    case 'leak': {
      const { chamberId } = fault;
      const chamber = model.chambers.find(({ id }) => id === chamberId)!;
      const compliance = chamberComplianceM3PerPa(chamber.volumeM3, model.air);
      const conductance = (2 * Math.PI * leakAtHz(model, chamberId) * compliance) / LEAK_Q;
      const leaks = [...build.leaks, { chamberId, node: airNode(chamberId), conductance }];
      const unknown = { kind: 'leak', chamberId, sdLog: WILD_LOSS } as const;
      const next = wild(unknownKey(unknown), WILD_LOSS, [0, -1.2, 1.2], { leaks });
      return { ...next, unknowns: [...base.unknowns, unknown] };
    }
    case 'port-length': {
      const key = unknownKey({ kind: 'air', branchId: portBranch(fault.portId), sdLog: 0 });
      return wild(key, WILD_PORT, [0.5, -0.5]);
    }
    case 'port-blocked':
      return changed({
        air: build.air.map((a) => (a.id === portBranch(fault.portId) ? { ...a, isBlocked: true } : a)),
      });
    case 'cable': {
      const unknown = { kind: 'cable', sdLog: WILD_LOSS } as const;
      const next = wild('cable', WILD_LOSS, [0, -1], { cableOhm: CABLE_OHM });
      return { ...next, unknowns: [...base.unknowns, unknown] };
    }
  }
}

/** The same faults in another base. */
export function rebuilt(base: Hypothesis, faults: readonly Fault[], model: SpeakerModel): Hypothesis {
  return faults.reduce((so, fault) => {
    const next = withFault(so, fault, model);
    if (next === null) throw new Error(`A ${fault.kind} that was there is not.`);
    return next;
  }, base);
}

/** Where the quality of a leak is stated: at the design's own frequency for it, or at the resonance of a driver on the chamber. */
export function leakAtHz(model: SpeakerModel, chamberId: string): number {
  const stated = model.chambers.find(({ id }) => id === chamberId)?.leak;
  if (stated) return stated.atHz;
  const driver = model.speakers.find((s) => s.chamberId === chamberId || s.frontChamberId === chamberId)?.parameters;
  return driver === undefined ? 50 : 1 / (2 * Math.PI * Math.sqrt(driver.mmsKg * driver.cmsMPerN));
}

/** Quality of an extra leak whose logarithm over the reference is given. */
export const leakQOf = (log: number): number => LEAK_Q / Math.exp(log);
export const cableOhmOf = (log: number): number => CABLE_OHM * Math.exp(log);

function scaled(part: Part, factor: number): Part {
  if (part.kind === 'resistor') return { ...part, ohm: part.ohm * factor };
  if (part.kind === 'capacitor') return { ...part, farad: part.farad * factor };
  // A coil of ten times the inductance has about the root of ten times the wire (common practice, no source).
  if (part.kind === 'inductor') return { ...part, henry: part.henry * factor, dcrOhm: part.dcrOhm * Math.sqrt(factor) };
  return part;
}

/** Parts change places: each keeps its values, and takes the other's nodes. */
function exchanged(
  base: Hypothesis,
  [first, second]: readonly [string, string],
  faults: readonly Fault[],
): Hypothesis | null {
  const { parts, drivers } = base.build;
  const a = [...parts.map(({ part }) => ({ ...part, partId: part.id })), ...drivers].find(
    ({ partId }) => partId === first,
  );
  const b = [...parts.map(({ part }) => ({ ...part, partId: part.id })), ...drivers].find(
    ({ partId }) => partId === second,
  );
  if (a === undefined || b === undefined) return null;
  const nodesOf = (id: string): readonly [string, string] | null =>
    id === first ? b.nodes : id === second ? a.nodes : null;
  if (parts.some(({ part, state }) => nodesOf(part.id) !== null && state !== 'whole')) return null;
  return {
    ...base,
    faults,
    build: {
      ...base.build,
      parts: parts.map((built) => {
        const nodes = nodesOf(built.part.id);
        return nodes === null ? built : { ...built, part: { ...built.part, nodes } };
      }),
      drivers: drivers.map((driver) => ({ ...driver, nodes: nodesOf(driver.partId) ?? driver.nodes })),
    },
  };
}

function moved(
  base: Hypothesis,
  { partId, end, node }: Fault & { kind: 'wrong-node' },
  faults: readonly Fault[],
): Hypothesis | null {
  const { parts, drivers } = base.build;
  const from =
    parts.find(({ part }) => part.id === partId)?.part.nodes ?? drivers.find((d) => d.partId === partId)?.nodes;
  if (from === undefined) return null;
  const nodes: readonly [string, string] = end === 0 ? [node, from[1]] : [from[0], node];
  if (nodes[0] === nodes[1]) return null;
  return {
    ...base,
    faults,
    build: {
      ...base.build,
      parts: parts.map((built) => (built.part.id === partId ? { ...built, part: { ...built.part, nodes } } : built)),
      drivers: drivers.map((driver) => (driver.partId === partId ? { ...driver, nodes } : driver)),
    },
  };
}
