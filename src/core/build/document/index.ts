export * from './cabinetOf.ts';
export * from './dividersOf.ts';
