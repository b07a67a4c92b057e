export { aperiodicStart } from './aperiodicStart.ts';
export { bandPassStart } from './bandPassStart.ts';
export { isobaricStart } from './isobaricStart.ts';
export { lineStart } from './lineStart.ts';
export { openBaffleStart } from './openBaffleStart.ts';
export { radiatorStart } from './radiatorStart.ts';
export { sealedStart } from './sealedStart.ts';
