import {
  type AdmittanceBranch,
  type AdmittanceTable,
  type Branch,
  type CompiledCircuit,
  type Complexes,
  compileCircuit,
  type NodeSolution,
  partBranches,
  retabulate,
  solveCircuit,
  solveInto,
  tabulateAdmittances,
} from '../../circuit/index.ts';
import { type Result, succeed } from '../../messages/problem.ts';
import type { SpeakerModel } from '../../speaker/model.ts';
import { type DriverPorts, driverPorts } from './driverPorts.ts';
import { portBranches } from './portBranches.ts';
import { isValued, partValue, type TrialVariable, type ValuedPart, variablesOf, withValue } from './trialVariable.ts';

/** A loudspeaker whose drivers, cabinet and listening points are settled, ready for any number of part values. */
export interface CrossoverTrial {
  readonly model: SpeakerModel;
  readonly frequenciesHz: Float64Array;
  readonly variables: readonly TrialVariable[];
  /** The varied parts as the model has them, in the order of the variables. */
  readonly parts: readonly ValuedPart[];
  /** Their values there: ohm, farad, henry. */
  readonly start: Float64Array;
  readonly ports: DriverPorts;
  /** Terminals of each speaker, in the order of `model.speakers`. */
  readonly terminals: readonly (readonly [string, string])[];
  readonly compiled: CompiledCircuit;
  readonly table: AdmittanceTable;
  /** Index among the circuit's branches of each variable. */
  readonly branchIndices: readonly number[];
}

/** The network solved with one set of values. Its numbers live in buffers that the next trial may take over. */
export interface Tried {
  readonly trial: CrossoverTrial;
  readonly values: Float64Array;
  readonly compiled: CompiledCircuit;
  readonly table: AdmittanceTable;
  readonly solution: NodeSolution;
  /** Per variable, branch voltage times dy/d ln p, once a gradient has asked for it. */
  readonly excitations: { kept: readonly Complexes[] | null; areValid: boolean };
}

export interface TrialInput {
  readonly model: SpeakerModel;
  /** Ascending, above 0. */
  readonly frequenciesHz: Float64Array;
  /** Absent: every resistor, capacitor and inductor. */
  readonly variables?: readonly TrialVariable[];
  /** The same loudspeaker from each listening point, different in its radiation alone; absent: the model's own point. */
  readonly heard?: readonly SpeakerModel[];
}

/**
 * Works out once what does not depend on the crossover's values, so that each set of values costs one solve of the network.
 *
 * Pressures, impedances and powers equal `simulate` to 1e-9, drivers that share a chamber included. Throws for a variable
 * that is no resistor, capacitor or inductor of the network. Problems: as `simulate`.
 * @example const trial = crossoverTrial({ model, frequenciesHz: sweepGrid(20, 20000, 200) });
 */
export function crossoverTrial(input: TrialInput): Result<CrossoverTrial> {
  const { model, frequenciesHz } = input;
  const variables = input.variables ?? variablesOf(model.parts);
  const parts = variables.map(({ partId }) => {
    const part = model.parts.find(({ id }) => id === partId);
    if (part === undefined || !isValued(part)) throw new RangeError(`The network has no value to vary at ${partId}.`);
    return part;
  });
  const ports = driverPorts(model, frequenciesHz, input.heard ?? [model]);
  if (!ports.ok) return ports;
  const terminals = model.speakers.map(({ partId }) => model.parts.find(({ id }) => id === partId)!.nodes);
  const ids = model.speakers.map(({ partId }) => partId);
  const compiled = compileCircuit([...networkBranches(model), ...portBranches(ports.value, terminals, ids)]);
  if (!compiled.ok) return compiled;
  const omegas = frequenciesHz.map((f) => 2 * Math.PI * f);
  return succeed({
    model,
    frequenciesHz,
    variables,
    parts,
    start: Float64Array.from(parts, partValue),
    ports: ports.value,
    terminals,
    compiled: compiled.value,
    table: tabulateAdmittances(compiled.value, omegas),
    branchIndices: variables.map(({ partId }) => compiled.value.indexOf.get(partId)!),
  });
}

/**
 * Solves the network with these values, in the order of the trial's variables; all above 0. `earlier` lends its buffers and
 * is void afterwards. Problems: as `solveCircuit`.
 * @example const tried = tryValues(trial, trial.start);
 */
export function tryValues(trial: CrossoverTrial, values: Float64Array, earlier?: Tried): Result<Tried> {
  const branches: Branch[] = [...trial.compiled.branches];
  trial.variables.forEach(({ dcrExponent }, i) => {
    const value = values[i]!;
    if (!(value > 0 && Number.isFinite(value))) throw new RangeError(`No value for a part: ${value}.`);
    const part = trial.parts[i]!;
    if (value !== trial.start[i]) branches[trial.branchIndices[i]!] = branchWith(part, value, dcrExponent);
  });
  const compiled = compiledWith(trial.compiled, branches, trial.branchIndices);
  if (!compiled.ok) return compiled;
  const table =
    earlier === undefined
      ? tabulateAdmittances(compiled.value, trial.table.omegas, trial.table)
      : retabulated(trial, compiled.value, earlier.table);
  const solution =
    earlier === undefined ? solveCircuit(compiled.value, table) : solveInto(earlier.solution, compiled.value, table);
  if (!solution.ok) return solution;
  return succeed({
    trial,
    values: Float64Array.from(values),
    compiled: compiled.value,
    table,
    solution: solution.value,
    excitations: { kept: earlier?.excitations.kept ?? null, areValid: false },
  });
}

function networkBranches(model: SpeakerModel): Branch[] {
  return model.parts.flatMap((part): readonly Branch[] => {
    if (part.kind !== 'amplifier') return partBranches(part);
    const amplifier = model.amplifiers.find(({ id }) => id === part.id);
    if (amplifier === undefined) throw new RangeError(`The model has no amplifier ${part.id}.`);
    const { voltageV, resistanceOhm, drive } = amplifier;
    return [{ kind: 'source', id: part.id, nodes: part.nodes, voltageV, resistanceOhm, ...(drive && { drive }) }];
  });
}

const branchWith = (part: ValuedPart, value: number, dcrExponent: number | undefined): AdmittanceBranch =>
  partBranches(withValue(part, value, dcrExponent))[0]!;

/** The topology is the same unless a resistance has passed the least that the solver takes. */
function compiledWith(
  compiled: CompiledCircuit,
  branches: readonly Branch[],
  changed: readonly number[],
): Result<CompiledCircuit> {
  const isSame = changed.every((index) => shortOf(branches[index]!) === shortOf(compiled.branches[index]!));
  return isSame ? succeed({ ...compiled, branches }) : compileCircuit(branches);
}

const shortOf = (branch: Branch) => (branch.kind === 'admittance' ? branch.short : undefined);

/** Rows of the settled branches are shared with the trial's own table, those of the varied ones are the trial's alone. */
function retabulated(trial: CrossoverTrial, compiled: CompiledCircuit, earlier: AdmittanceTable): AdmittanceTable {
  const own = trial.table.rows;
  const lent = earlier.rows.map((row, i) => (row === own[i] ? null : row));
  const rows = compiled.branches.map((branch, i) => (branch === own[i]?.branch ? own[i]! : (lent[i] ?? null)));
  return retabulate(compiled, { ...earlier, rows });
}
