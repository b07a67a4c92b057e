export { type AdjointSolution, type OutputTerm, outputDerivativeInto, solveAdjoint } from './adjoint.ts';
export * from './branch.ts';
export { branchCurrentInto, secondaryCurrentInto } from './branchCurrent.ts';
export * from './branches/index.ts';
export { branchPower, branchPowerInto } from './branchPower.ts';
export { branchVoltageInto, voltageBetweenInto } from './branchVoltage.ts';
export { compileCircuit } from './compileCircuit.ts';
export type { CompiledCircuit } from './compiledCircuit.ts';
export * from './drawer/index.ts';
export * from './kinds/index.ts';
export * from './load/index.ts';
export * from './netlist/index.ts';
export type { Complexes, NodeSolution } from './nodeSolution.ts';
export { branchNodes, nodesOf } from './nodesOf.ts';
export * from './part.ts';
export { partBranches } from './partBranches.ts';
export {
  type BranchValue,
  branchValueOf,
  impedanceLogSensitivity,
  logSensitivity,
  powerDerivatives,
  sensitivityPerCent,
} from './sensitivity.ts';
export { solveCircuit, solveInto } from './solveCircuit.ts';
export { inputImpedance, OPEN_OHM, sourceCurrent } from './sourceCurrent.ts';
export * from './synthesis/index.ts';
export { type AdmittanceRow, type AdmittanceTable, retabulate, tabulateAdmittances } from './tabulateAdmittances.ts';
export * from './wire/index.ts';
