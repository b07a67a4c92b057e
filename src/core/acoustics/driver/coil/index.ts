export * from './fourParameterCoil.ts';
export * from './powerLawCoil.ts';
export * from './resistorCoil.ts';
export * from './shortedCoil.ts';
