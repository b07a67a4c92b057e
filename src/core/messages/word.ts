import { acousticsWording } from './acoustics.ts';
import { alignmentsWording } from './alignments.ts';
import { buildWording } from './build.ts';
import { circuitWording } from './circuit.ts';
import { designWording } from './design.ts';
import { documentWording } from './document.ts';
import { drawerWording } from './drawer.ts';
import { faultsWording } from './faults.ts';
import { findingsWording } from './findings.ts';
import { fitsWording } from './fits.ts';
import { measuredWording } from './measured.ts';
import { optimiseWording } from './optimise.ts';
import type { Place, Problem, Wording, WordingByCode } from './problem.ts';
import { speakerWording } from './speaker.ts';
import { suitabilityWording } from './suitability.ts';
import { unitsWording } from './units.ts';
import { windingWording } from './winding.ts';

// A Map, so that a code such as `constructor` finds nothing.
const wordings = new Map<string, WordingByCode[string]>();
for (const room of [
  circuitWording,
  acousticsWording,
  unitsWording,
  measuredWording,
  documentWording,
  speakerWording,
  findingsWording,
  faultsWording,
  fitsWording,
  buildWording,
  designWording,
  alignmentsWording,
  optimiseWording,
  suitabilityWording,
  windingWording,
  drawerWording,
]) {
  for (const [code, wording] of Object.entries(room)) {
    if (wordings.has(code)) throw new Error(`Two rooms word ${code}.`);
    wordings.set(code, wording);
  }
}

const placeText = ({ kind, id, line, field }: Place): string =>
  [line === undefined ? '' : `line ${line}`, field === undefined ? '' : `field ${field}`, id ?? '', kind]
    .filter((part, index, all) => part !== '' && (index < 3 || all.slice(0, 3).every((other) => other === '')))
    .join(', ');

/**
 * Words a problem or a finding: one sentence with its place and number, and one remedy. A code that no room words gets a
 * general sentence that names code and place, so that nothing fails in silence.
 *
 * Example: `word(problem('units.empty', { kind: 'field', field: 'length' })).sentence`.
 */
export function word(problem: Problem): Wording {
  const wording = wordings.get(problem.code);
  if (wording !== undefined) return wording(problem.values, problem.place);
  return {
    sentence: `Something is wrong here (${placeText(problem.place)}), and there is no description for it yet: ${problem.code}.`,
    remedy: 'Undo the last change, or look at this place for a value that cannot be right.',
  };
}

/** Codes that have a sentence, for the test that every code in use is worded. */
export const wordedCodes = (): readonly string[] => [...wordings.keys()];
