import { partKindWords } from '../partKindWords.ts';
import type { WordingByCode } from '../problem.ts';
import { placeWords } from './subject.ts';

/** "a link", "an amplifier" */
const aPart = (kind: unknown): string => {
  const words = partKindWords(kind);
  return `${/^[aeiou]/.test(words) ? 'an' : 'a'} ${words}`;
};

/** Sentences of edits that cannot be carried out. */
export const editWording: WordingByCode = {
  'document.unknown-part': (_, place) => ({
    sentence: `The circuit has no part “${place.id}”.`,
    remedy: 'Choose one of its parts.',
  }),
  'document.unknown-speaker': (_, place) => ({
    sentence: `The circuit has no speaker “${place.id}”.`,
    remedy: 'Choose one of its speakers.',
  }),
  'document.unknown-amplifier': (_, place) => ({
    sentence: `The circuit has no amplifier “${place.id}”.`,
    remedy: 'Choose one of its amplifiers.',
  }),
  'document.unknown-node': (_, place) => ({
    sentence: `The circuit has no node “${place.id}”.`,
    remedy: 'Choose a node at which some part ends.',
  }),
  'document.unknown-driver': (values, place) => ({
    sentence: `There is no driver “${place.id}”${values.partId ? ` for ${values.partId}` : ''}.`,
    remedy: values.known ? `Drivers of this project: ${values.known}.` : 'Add the driver first.',
  }),
  'document.unknown-chamber': (_, place) => ({
    sentence: `The cabinet has no chamber “${place.id}”.`,
    remedy: 'Choose one of its chambers.',
  }),
  'document.unknown-port': (_, place) => ({
    sentence: `The cabinet has no port “${place.id}”.`,
    remedy: 'Choose one of its ports.',
  }),
  'document.unknown-radiator': (_, place) => ({
    sentence: `The cabinet has no passive radiator “${place.id}”.`,
    remedy: 'Choose one of its passive radiators.',
  }),
  'document.unknown-line': (_, place) => ({
    sentence: `The cabinet has no line “${place.id}”.`,
    remedy: 'Choose one of its lines.',
  }),
  'document.unknown-curve': (_, place) => ({
    sentence: `There is no curve “${place.id}”.`,
    remedy: 'Choose one of the curves of the project.',
  }),
  'document.unknown-state': (_, place) => ({
    sentence: `There is no kept state “${place.id}”.`,
    remedy: 'Choose one of the kept states.',
  }),
  'document.no-such-value': (values, place) => ({
    sentence: `${place.id} is ${aPart(values.kind)} and has no value “${values.field}”.`,
    remedy: 'Set one of its own values, or swap the part for another kind.',
  }),
  'document.keeps-kind': (_, place) => ({
    sentence: `${place.id} cannot be swapped for, or from, a part of another kind: speakers and amplifiers stay what they are.`,
    remedy: 'Choose another driver for the speaker, or remove the way and add another.',
  }),
  'document.not-removable': (values, place) => ({
    sentence: `${place.id} is ${values.kind === 'speaker' ? 'a speaker' : 'an amplifier'} and is not removed like a single part.`,
    remedy: values.kind === 'speaker' ? 'Remove its way instead.' : 'Remove the amplifier channel instead.',
  }),
  'document.would-short': (values, place) => ({
    sentence: `That would short ${values.kind === 'speaker' ? 'the speaker' : 'the amplifier'} ${place.id}: both its terminals would be joined.`,
    remedy:
      values.kind === 'speaker'
        ? 'Leave the place open instead, or move the part.'
        : 'A shorted amplifier can be damaged: leave the place open instead, or move the part.',
  }),
  'document.would-short-part': (values, place) => ({
    sentence: `${place.id} lies across the same two nodes (“${values.a}” and “${values.b}”) and would be shorted.`,
    remedy: `Leave the place open instead, or remove ${place.id} first.`,
  }),
  'document.would-join-amplifiers': (values) => ({
    sentence: `That would join the outputs of the amplifiers ${values.a} and ${values.b}.`,
    remedy: 'Two amplifiers never drive the same node: one would force current into the other.',
  }),
  'document.both-ends': (values, place) => ({
    sentence: `Both ends of ${place.id} would be on node “${values.node}”.`,
    remedy: 'Choose another node for this end.',
  }),
  'document.same-node': (_, place) => ({
    sentence: `Both ends would be on node “${place.id}”.`,
    remedy: 'Choose two different nodes.',
  }),
  'document.amplifier-in-series': (_, place) => ({
    sentence: `An amplifier cannot stand in series with ${place.id}.`,
    remedy: 'Add it between a node and the return “0”.',
  }),
  'document.amplifier-kept': (values) => ({
    sentence: `The text has no amplifier line; this one was kept from the circuit before: “${values.line}”.`,
    remedy: 'Write a V line to set the amplifier yourself.',
  }),
  'document.name-taken': (values) => ({
    sentence: `The name “${values.to}” is already used in this circuit.`,
    remedy: 'Choose another name.',
  }),
  'document.bad-part-name': (values, place) => ({
    sentence: `“${values.to}” cannot be the name of ${place.id}, ${aPart(values.kind)}.`,
    remedy: `Begin with ${values.prefix}, then letters, digits, _ . or -, without spaces: circuit text reads the kind from it.`,
  }),
  'document.section-node': (values) => ({
    sentence: `A section names the node “${values.node}”, which it does not know.`,
    remedy: 'Use @in, @out, inner nodes @1, @2 ... and the return “0”, with at least one part at @out.',
  }),
  'document.section-part': (values) => ({
    sentence: `A section cannot contain ${values.kind === 'speaker' ? 'a speaker' : 'an amplifier'}.`,
    remedy: 'Use resistors, capacitors, inductors and links.',
  }),
  'document.last-way': (_, place) => ({
    sentence: `${place.id} is the only speaker; a project keeps at least one.`,
    remedy: 'Add another way first, or start a new project.',
  }),
  'document.last-amplifier': (_, place) => ({
    sentence: `${place.id} is the only amplifier; a project keeps at least one.`,
    remedy: 'Add another channel first.',
  }),
  'document.chamber-in-use': (values, place) => ({
    sentence: `${values.speakers} sits in ${placeWords(place, values)}.`,
    remedy: 'Move the drivers to another chamber first.',
  }),
  'document.curve-in-use': (values, place) => ({
    sentence: `The kept state “${values.keptState}” uses ${placeWords(place, values)}.`,
    remedy: 'Drop the kept state first.',
  }),
  'document.two-states': () => ({
    sentence: 'Two states are kept already.',
    remedy: 'Drop one of them first.',
  }),
};
