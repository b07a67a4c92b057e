import {
  type Branch,
  capacitor,
  coil,
  type DriverEquivalent,
  exportForSimulator,
  inductor,
  type Part,
  partBranches,
  resistor,
  source,
} from '../../src/core/circuit/index.ts';
import { readModel } from '../../src/core/speaker/readModel.ts';
import { demoA } from './demo.ts';

/** One network, written for our solver and for a general circuit simulator. */
export interface SweepNetwork {
  readonly branches: readonly Branch[];
  /** The simulator's text for a sweep statement, with or without a statement of what to save. */
  text(sweep: string, save: string): string;
  /** Nodes that both have. */
  readonly nodes: readonly string[];
  readonly outputs: readonly string[];
  readonly partCount: number;
}

/**
 * Demo (a)'s crossover with its drivers as R-L-C equivalents: coil resistance and inductance, then mass, losses and
 * compliance as C, R and L. What plain elements cannot say (core loss, semi-inductance, box) is left out on both sides.
 */
export function sweepNetwork(): SweepNetwork {
  const read = readModel(demoA());
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const { model } = read.value;
  const parts = model.parts.map((part): Part => (part.kind === 'inductor' ? { ...part, coreLossTangent: 0 } : part));
  const drivers = new Map<string, DriverEquivalent>();
  const branches: Branch[] = parts.flatMap((part) => partBranches(part));
  for (const part of parts) {
    if (part.kind === 'amplifier') {
      const { voltageV, resistanceOhm } = model.amplifiers.find(({ id }) => id === part.id)!;
      branches.push(source(part.id, part.nodes, voltageV, resistanceOhm));
    }
    if (part.kind !== 'speaker') continue;
    const { parameters } = model.speakers.find(({ partId }) => partId === part.id)!;
    const { reOhm, leH, blTm, mmsKg, cmsMPerN, rmsKgPerS } = parameters;
    const squared = blTm * blTm;
    const motional = { ohm: squared / rmsKgPerS, farad: mmsKg / squared, henry: cmsMPerN * squared };
    const equivalent: DriverEquivalent = { reOhm, leH, semiInductance: null, motional };
    drivers.set(part.driverId, equivalent);
    const [plus, minus] = part.nodes;
    const inner = `${part.id}_emf`;
    branches.push(
      coil(`${part.id} coil`, [plus, inner], equivalent),
      resistor(`${part.id} losses`, [inner, minus], motional.ohm),
      capacitor(`${part.id} mass`, [inner, minus], { farad: motional.farad, esrOhm: 0 }),
      inductor(`${part.id} compliance`, [inner, minus], { henry: motional.henry, dcrOhm: 0, coreLossTangent: 0 }),
    );
  }
  const { text } = exportForSimulator(parts, {
    title: 'network sweep',
    amplifiers: model.amplifiers,
    drivers,
    lowHz: 10,
    highHz: 40000,
  });
  const nodes = [...new Set(parts.flatMap((part) => part.nodes))].filter((node) => node !== '0');
  const outputs = parts.flatMap((part) =>
    part.kind === 'speaker' ? part.nodes.filter((node) => node !== '0').slice(0, 1) : [],
  );
  return {
    branches,
    text: (sweep, save) => text.replace(/^\.ac .*$/m, [save, sweep].filter((line) => line !== '').join('\n')),
    nodes,
    outputs: [...new Set([...outputs, ...nodes])].slice(0, 4),
    partCount: parts.length,
  };
}
