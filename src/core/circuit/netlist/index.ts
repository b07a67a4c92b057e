export { engineeringText, readEngineering } from './engineeringValue.ts';
export { type DriverEquivalent, exportForSimulator, type SimulatorExport } from './exportForSimulator.ts';
export { formatNetlist } from './formatNetlist.ts';
export { parseNetlist } from './parseNetlist.ts';
export { type Ladder, semiInductanceLadder } from './semiInductanceLadder.ts';
