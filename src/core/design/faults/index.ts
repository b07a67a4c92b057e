export { type Fault, type FaultKind, faultKey } from './fault.ts';
export type { FaultGroup, FaultReport, FittedValue, RankedFault } from './faultReport.ts';
export { faultsOfProject, type ProjectFaultSearch } from './faultsOfProject.ts';
export { type FaultTolerances, USUAL_TOLERANCES } from './faultTolerances.ts';
export { type FaultSearch, findFaults } from './findFaults.ts';
export type { TakenImpedance } from './impedanceData.ts';
export { measurementProblem } from './measurementProblem.ts';
export type { Measurement, NextMeasurement } from './nextMeasurement.ts';
export type { TakenResponse } from './takenResponse.ts';
