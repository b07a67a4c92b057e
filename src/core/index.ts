// The public core: everything a person needs to use it from Node without the app.
export * from './acoustics/index.ts';
export * from './build/index.ts';
export type { Admittance } from './circuit/index.ts';
export * from './circuit/index.ts';
export * from './design/index.ts';
export type { DriverEntered } from './document/index.ts';
export * from './document/index.ts';
export * from './measured/index.ts';
export * from './messages/index.ts';
export * from './speaker/index.ts';
export * from './units/index.ts';
