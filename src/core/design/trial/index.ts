export { type CrossoverTrial, crossoverTrial, type TrialInput, type Tried, tryValues } from './crossoverTrial.ts';
export { type HeardAngle, modelsHeard } from './modelsHeard.ts';
export { type PartSensitivity, sensitivityStrip, strongestAt } from './sensitivityStrip.ts';
export {
  type TrialCurve,
  terminalVoltages,
  trialLevelGradient,
  trialLevelsDb,
  trialSum,
  trialSumDerivatives,
} from './trialCurve.ts';
export { trialImpedance, trialImpedanceDerivatives } from './trialImpedance.ts';
export { trialPower, trialPowerDerivatives } from './trialPower.ts';
export { isValued, partValue, type TrialVariable, type ValuedPart, variablesOf, withValue } from './trialVariable.ts';
