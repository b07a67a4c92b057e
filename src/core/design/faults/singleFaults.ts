import type { SpeakerModel } from '../../speaker/model.ts';
import { leakBranch, portBranch, volumeBranch } from '../../speaker/nodeNames.ts';
import type { Build } from './build.ts';
import type { Fault } from './fault.ts';

/** Every single fault that is looked for in a build, those that an impedance cannot show included. */
export function singleFaults(model: SpeakerModel, build: Build): Fault[] {
  const faults: Fault[] = [];
  const valued = build.parts.map(({ part }) => part).filter(({ kind }) => kind !== 'jumper');
  for (const { part } of build.parts) {
    if (part.kind === 'jumper') faults.push({ kind: 'link-missing', partId: part.id });
  }
  for (const { id: partId } of valued) {
    faults.push(
      { kind: 'part-open', partId },
      { kind: 'part-short', partId },
      { kind: 'part-value', partId },
      { kind: 'part-decade', partId, factor: 10 },
      { kind: 'part-decade', partId, factor: 0.1 },
    );
  }
  valued.forEach((a, i) => {
    for (const b of valued.slice(i + 1)) {
      if (a.kind === b.kind) faults.push({ kind: 'exchanged', partIds: [a.id, b.id] });
    }
  });
  const drivers = build.drivers.filter(({ isOpen }) => !isOpen);
  drivers.forEach(({ partId }, i) => {
    for (const other of drivers.slice(i + 1)) faults.push({ kind: 'exchanged', partIds: [partId, other.partId] });
    faults.push(
      { kind: 'driver-open', partId },
      { kind: 'driver-resonance', partId },
      { kind: 'driver-reversed', partId },
    );
  });
  const ends = [
    ...valued.map(({ id, nodes }) => ({ id, nodes })),
    ...drivers.map(({ partId, nodes }) => ({ id: partId, nodes })),
  ];
  for (const { id: partId, nodes } of ends) {
    for (const end of [0, 1] as const) {
      for (const node of neighbours(build, partId, nodes[end])) {
        if (node !== nodes[1 - end]) faults.push({ kind: 'wrong-node', partId, end, node });
      }
    }
  }
  const air = new Set(build.air.map(({ id }) => id));
  for (const { id: chamberId } of model.chambers) {
    if (air.has(volumeBranch(chamberId)) || air.has(leakBranch(chamberId))) faults.push({ kind: 'leak', chamberId });
  }
  for (const { id: portId } of model.ports) {
    if (air.has(portBranch(portId))) faults.push({ kind: 'port-length', portId }, { kind: 'port-blocked', portId });
  }
  faults.push({ kind: 'cable' });
  return faults;
}

/** Nodes that one other part, driver or link away from a node. */
function neighbours({ parts, drivers }: Build, partId: string, node: string): readonly string[] {
  const found = new Set<string>();
  const pairs = [
    ...parts.map(({ part }) => ({ id: part.id, nodes: part.nodes })),
    ...drivers.map((d) => ({ id: d.partId, nodes: d.nodes })),
  ];
  for (const { id, nodes } of pairs) {
    if (id === partId) continue;
    if (nodes[0] === node) found.add(nodes[1]);
    if (nodes[1] === node) found.add(nodes[0]);
  }
  found.delete(node);
  return [...found];
}
