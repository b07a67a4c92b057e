import type { WordingByCode } from './problem.ts';

/** Sentences of the circuit's problems and remarks. */
export const circuitWording: WordingByCode = {
  'circuit.duplicate-id': ({ part }) => ({
    sentence: `Two parts are called ${part}.`,
    remedy: 'Give one of them another name.',
  }),
  'circuit.source-off-return': ({ source, node }) => ({
    sentence: `The return of amplifier ${source} is joined to node ${node}, not to node 0.`,
    remedy: 'Join its return to node 0, or give the amplifier an output resistance.',
  }),
  'circuit.source-loop': ({ source, other, node }) => ({
    sentence: `Amplifiers ${source} and ${other} drive the same node ${node}.`,
    remedy: 'Give each its own node: two outputs joined together can destroy each other.',
  }),
  'circuit.source-shorted': ({ source, node, by }) => ({
    sentence: `Amplifier ${source} is shorted at node ${node}, by way of ${by}.`,
    remedy: `Break the short at ${by}: take a part out or move one of its ends. A short can destroy the amplifier.`,
  }),
  'circuit.floating-node': ({ node, part }) => ({
    sentence: `Node ${node} at ${part} has no path to the return, so its voltage is undetermined.`,
    remedy: `Join it to the rest of the circuit, or take ${part} out.`,
  }),
  'circuit.singular': ({ node, atHz }) => ({
    sentence: `Nothing fixes the voltage of node ${node} at ${Number(atHz).toPrecision(4)} Hz: parts without loss resonate there.`,
    remedy: 'Give the coil at that node its winding resistance.',
  }),
  'circuit.not-finite': ({ part }) => ({
    sentence: `The value of ${part} gives no finite current.`,
    remedy: 'Enter a value above 0 that the part can have.',
  }),
  'circuit.both-ends-on-one-node': ({ part, node }) => ({
    sentence: `Both ends of ${part} are on node ${node}, so no current flows in it.`,
    remedy: 'Move one end, or take the part out.',
  }),
  'circuit.resistance-floored': ({ part }) => ({
    sentence: `${part} is below 1 mΩ and is counted as 1 mΩ.`,
    remedy: 'Use a link if a plain connection is meant.',
  }),
  'circuit.netlist-empty': () => ({
    sentence: 'The text has no parts in it.',
    remedy: 'Write one part a line, such as R1 in out 8.2.',
  }),
  'circuit.netlist-unknown-line': ({ text }, { line }) => ({
    sentence: `Line ${line} is no part: “${text}”.`,
    remedy: 'Begin a part with R, C, L, LS, J or V, and a comment with *.',
  }),
  'circuit.netlist-directive': ({ text }, { line }) => ({
    sentence: `Line ${line} is an instruction to a simulator: “${text}”.`,
    remedy: 'Take it out: only parts and .end are read.',
  }),
  'circuit.netlist-after-end': ({ text }, { line }) => ({
    sentence: `Line ${line} stands behind .end: “${text}”.`,
    remedy: 'Move .end to the last line, or take the line out.',
  }),
  'circuit.netlist-continuation': (_values, { line }) => ({
    sentence: `Line ${line} begins with +, but there is no part before it to continue.`,
    remedy: 'Put the part’s first line before it.',
  }),
  'circuit.netlist-too-short': ({ part, wanted }, { line }) => ({
    sentence: `Line ${line} is too short: ${part} needs ${wanted}.`,
    remedy: 'Complete the line, such as R1 in out 8.2.',
  }),
  'circuit.netlist-extra': ({ part, text }, { line }) => ({
    sentence: `Line ${line} has more than ${part} can take: “${text}”.`,
    remedy: 'Take that out, or put it behind a semicolon as a note.',
  }),
  'circuit.netlist-node': ({ part, text }, { line }) => ({
    sentence: `Line ${line} joins ${part} to “${text}”, which is no name of a node.`,
    remedy: 'Use up to 32 letters, digits, points, dashes or underlines.',
  }),
  'circuit.netlist-value': ({ part, text }, { line }) => ({
    sentence: `Line ${line} gives ${part} the value “${text}”, which is no number with a suffix and this part’s unit.`,
    remedy: 'Write it like 8.2, 0.47m or 33uF; M is milli and MEG is mega.',
  }),
  'circuit.netlist-range': ({ part, text }, { line }) => ({
    sentence: `Line ${line} gives ${part} the value ${text}, which no such part can have.`,
    remedy: 'Enter a value above 0.',
  }),
  'circuit.netlist-option': ({ part, text }, { line }) => ({
    sentence: `Line ${line} gives ${part} “${text}”, which is not understood.`,
    remedy: 'Coils take dcr= and tand=, capacitors esr=, resistors rated=, each once with a number.',
  }),
  'circuit.netlist-speaker-value': ({ part, text }, { line }) => ({
    sentence: `Line ${line} calls a driver “${text}”: names that begin with LS belong to speakers, and ${part} has a value.`,
    remedy: 'Give a coil another name, such as L1; put a driver’s name that looks like a number in quotation marks.',
  }),
  'circuit.netlist-duplicate': ({ part, otherLine }, { line }) => ({
    sentence: `Line ${line} uses the name ${part} again; line ${otherLine} has it already.`,
    remedy: 'Give one of the two another name.',
  }),
  'circuit.export-core-loss': ({ part }) => ({
    sentence: `The core losses of ${part} are not in the exported text.`,
    remedy: 'Expect a little less loss from the simulator, or add to the coil’s resistance there.',
  }),
  'circuit.export-driver': ({ part }) => ({
    sentence: `${part} is only a comment in the exported text: its driver has no equivalent elements.`,
    remedy: 'Complete the driver’s data and export again.',
  }),
  'circuit.export-semi-inductance': ({ part, exponent }) => ({
    sentence: `The semi-inductance of ${part} is not in the exported text: its exponent ${exponent} is outside 0 to 1.`,
    remedy: 'Check the exponent in the driver’s data.',
  }),
  'circuit.section-value': ({ field, value }) => ({
    sentence: `A section cannot be made with ${SECTION_FIELDS[String(field)] ?? field} ${value}.`,
    remedy: 'Enter a number above 0.',
  }),
  'circuit.section-order': ({ family, order }) => ({
    sentence: `There is no ${SECTION_FAMILIES[String(family)] ?? family} section of order ${order}.`,
    remedy: 'Choose a whole order from 1 to 8; Linkwitz–Riley takes even ones.',
  }),
  'circuit.filter-order': ({ family, order }) => ({
    sentence: `There is no active ${SECTION_FAMILIES[String(family)] ?? family} filter of order ${order}.`,
    remedy: 'Choose an order from 1 to 4; Linkwitz–Riley takes 2 and 4.',
  }),
  'circuit.section-band': ({ lowHz, highHz }) => ({
    sentence: `The upper frequency ${highHz} Hz is not above the lower one, ${lowHz} Hz.`,
    remedy: 'Enter the lower frequency first.',
  }),
};

const SECTION_FIELDS: Readonly<Record<string, string>> = {
  cornerHz: 'a corner frequency of',
  lowHz: 'a lower frequency of',
  highHz: 'an upper frequency of',
  centreHz: 'a centre frequency of',
  loadOhm: 'a load resistance of',
  lowOhm: 'a woofer resistance of',
  midOhm: 'a midrange resistance of',
  highOhm: 'a tweeter resistance of',
  attenuationDb: 'an attenuation of',
  reOhm: 'a coil resistance of',
  leH: 'a coil inductance of',
  fsHz: 'a resonance of',
  qms: 'a Qms of',
  qes: 'a Qes of',
  q: 'a Q of',
  ohm: 'a resistance of',
};
const SECTION_FAMILIES: Readonly<Record<string, string>> = {
  butterworth: 'Butterworth',
  'linkwitz-riley': 'Linkwitz–Riley',
  bessel: 'Bessel',
};
