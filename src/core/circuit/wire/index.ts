export { type Cable, cableOhm, seriesLossDb } from './cable.ts';
export { ALUMINIUM, COPPER, type Conductor, resistivityAtOhmM } from './conductor.ts';
export { WINDING_WIRES, type WindingWire } from './windingWires.ts';
export { type WireFigures, wireFigures } from './wireFigures.ts';
export { diameterGauge, gaugeDiameterM } from './wireGauge.ts';
