import { plainWood } from './schema/plainWood.ts';
import type { Chain, Chamber, Driver, Enclosure, Mount, Port } from './schema.ts';

// What the later fields say while nothing special is wanted: the defaults of the schema, for what is made in code.

export const plainDriver: Pick<Driver, 'fitting' | 'heat'> = { fitting: null, heat: null };

export const plainChamber: Pick<Chamber, 'filling'> = { filling: null };

export const plainPort: Pick<
  Port,
  'toChamberId' | 'innerFlareM' | 'outerFlareM' | 'bends' | 'stuffingPaSPerM2' | 'resonances'
> = { toChamberId: null, innerFlareM: 0, outerFlareM: 0, bends: 0, stuffingPaSPerM2: 0, resonances: false };

export const plainMount: Pick<Mount, 'frontChamberId' | 'back'> = { frontChamberId: null, back: 'closed' };

export const plainAmplifier: Pick<Chain['amplifiers'][number], 'highPass' | 'peakVoltageV' | 'peakCurrentA'> = {
  highPass: null,
  peakVoltageV: null,
  peakCurrentA: null,
};

export const plainEnclosure: Pick<Enclosure, 'passiveRadiators' | 'lines' | 'wood'> = {
  passiveRadiators: [],
  lines: [],
  wood: plainWood,
};
