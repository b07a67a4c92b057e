import { type AdmittanceBranch, RETURN } from '../../circuit/branch.ts';
import { resistor } from '../../circuit/branches/resistor.ts';
import type { Part } from '../../circuit/part.ts';
import { partBranches } from '../../circuit/partBranches.ts';
import { airNode } from '../../speaker/nodeNames.ts';
import type { Build } from './build.ts';
import type { PartValue, Unknown } from './unknown.ts';

/** What a part that is bridged by solder or a stray wire counts as, ohm. */
const BRIDGE_OHM = 1e-3;

/** Index of a node among the equations; -1 for the return. */
type Index = number;

export interface PartSlot {
  readonly part: Part;
  readonly a: Index;
  readonly b: Index;
  readonly isBridge: boolean;
  /** The unknowns that belong to it. */
  readonly unknowns: readonly { readonly at: number; readonly name: PartValue }[];
}

export interface DriverSlot {
  readonly plus: Index;
  readonly minus: Index;
  readonly rear: Index;
  readonly front: Index;
  /** Index of each unknown of this driver; -1: it is not varied. */
  readonly resistance: number;
  readonly inductance: number;
  readonly compliance: number;
  readonly loss: number;
  readonly motor: number;
}

export interface AirSlot {
  readonly a: Index;
  readonly b: Index;
  readonly unknown: number;
}

/** Where each piece of a build enters the equations, worked out once for all values of its unknowns. */
export interface BuildLayout {
  readonly build: Build;
  readonly unknowns: readonly Unknown[];
  readonly nodeCount: number;
  readonly airCount: number;
  readonly plus: Index;
  readonly minus: Index;
  readonly parts: readonly PartSlot[];
  readonly drivers: readonly DriverSlot[];
  readonly air: readonly AirSlot[];
  readonly leaks: readonly AirSlot[];
  readonly cable: number;
}

/** Indices for a build's nodes, the terminals last, and for the unknowns of its pieces. */
export function buildLayout(build: Build, unknowns: readonly Unknown[]): BuildLayout {
  const nodes = new Map<string, number>();
  const name = (node: string): void => {
    if (node !== RETURN && !build.terminals.includes(node) && !nodes.has(node)) nodes.set(node, nodes.size);
  };
  const slots = build.parts
    .filter(({ state }) => state !== 'open')
    .map((built) => ({ built, branches: branchesOf(built) }));
  for (const { branches } of slots) for (const { nodes: ends } of branches) ends.forEach(name);
  for (const { nodes: ends } of build.drivers) ends.forEach(name);
  for (const node of build.terminals) if (node !== RETURN && !nodes.has(node)) nodes.set(node, nodes.size);
  const at = (node: string): Index => nodes.get(node) ?? -1;

  const air = new Map<string, number>();
  for (const { nodes: ends } of build.air)
    for (const node of ends) if (node !== RETURN && !air.has(node)) air.set(node, air.size);
  const airAt = (node: string): Index => air.get(node) ?? -1;
  const beside = (chamberId: string | null | undefined): Index => (chamberId ? airAt(airNode(chamberId)) : -1);

  const find = (matches: (unknown: Unknown) => boolean): number => unknowns.findIndex(matches);
  return {
    build,
    unknowns,
    nodeCount: nodes.size,
    airCount: air.size,
    plus: at(build.terminals[0]),
    minus: at(build.terminals[1]),
    parts: slots.flatMap(({ built, branches }) =>
      branches.map((branch) => ({
        part: built.part,
        a: at(branch.nodes[0]),
        b: at(branch.nodes[1]),
        isBridge: built.state === 'short',
        unknowns:
          built.state === 'short'
            ? []
            : unknowns.flatMap((u, i) =>
                u.kind === 'part' && u.partId === built.part.id ? [{ at: i, name: u.name }] : [],
              ),
      })),
    ),
    drivers: build.drivers.map((driver) => {
      const of = (value: string): number =>
        find((u) => u.kind === 'driver' && u.partId === driver.partId && u.name === value);
      return {
        plus: at(driver.nodes[0]),
        minus: at(driver.nodes[1]),
        rear: beside(driver.speaker.chamberId),
        front: beside(driver.speaker.frontChamberId),
        resistance: of('resistance'),
        inductance: of('inductance'),
        compliance: of('compliance'),
        loss: of('loss'),
        motor: of('motor'),
      };
    }),
    air: build.air.map(({ id, nodes: ends, isBlocked }) => ({
      a: isBlocked ? -1 : airAt(ends[0]),
      b: isBlocked ? -1 : airAt(ends[1]),
      unknown: find((u) => u.kind === 'air' && u.branchId === id),
    })),
    leaks: build.leaks.map(({ chamberId, node }) => ({
      a: airAt(node),
      b: -1,
      unknown: find((u) => u.kind === 'leak' && u.chamberId === chamberId),
    })),
    cable: build.cableOhm > 0 ? find((u) => u.kind === 'cable') : -1,
  };
}

/** Branches of a part as it is built; an open one has none. */
export function branchesOf({ part, state }: Build['parts'][number]): readonly AdmittanceBranch[] {
  if (state === 'open') return [];
  return state === 'short' ? [resistor(part.id, part.nodes, BRIDGE_OHM)] : partBranches(part);
}
