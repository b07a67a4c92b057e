export { chamberTuning } from './chamberTuning.ts';
export { type Evaluated, evaluateProject } from './evaluateProject.ts';
export type { Evaluation, KeyFigures } from './evaluation.ts';
export { PORT_SPEED_CAREFUL_M_PER_S, PORT_SPEED_LOUD_M_PER_S } from './findings/portSpeed.ts';
export { driverOf, keyFigures } from './keyFigures.ts';
export * from './levelFigures.ts';
export { sensitivityDbSpl } from './sensitivity.ts';
export { SCREEN_COUNT, SCREEN_FROM_HZ, SCREEN_TO_HZ, sweepGrid } from './sweepGrid.ts';
