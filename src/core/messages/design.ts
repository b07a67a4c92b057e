import { capital } from './document/subject.ts';
import type { ProblemValues, WordingByCode } from './problem.ts';
import { litres, millimetres } from './shortFigures.ts';

/** Sentences of the codes that begin with `design.`. */
export const designWording: WordingByCode = {
  'design.several-ports': (v) => ({
    sentence: `Chamber “${v.name}” has several kinds of port, so that no single length gives the tuning.`,
    remedy: 'Remove all but one of them, or set their lengths by hand.',
  }),
  'design.no-back': (v) => ({
    sentence: `Chamber “${v.name}” has no port, and it does not reach the back of the cabinet, where a new one would go.`,
    remedy: 'Add a port to it on the front first; its cross-section is kept.',
  }),
  'design.tube-too-wide': (v) => ({
    sentence: `The port for “${v.name}” would have to be ${millimetres(v.diameterM)} wide, but the cabinet leaves ${millimetres(v.clearM)} inside.`,
    remedy: 'Make the cabinet larger, or add a slot or several smaller ports first.',
  }),
  'design.no-room': (v) => {
    const ways = [
      Number(v.grossM3) > Number(v.presentM3) ? 'make the cabinet larger' : '',
      wayPast(v.topMeets, v.topName),
      wayPast(v.bottomMeets, v.bottomName),
    ].filter((way, index, all) => way !== '' && all.indexOf(way) === index);
    return {
      sentence: `Chamber “${v.name}” would have to be ${litres(v.grossM3)} gross instead of ${litres(v.presentM3)}: its top cannot go ${bound('top', v.topMeets, v.topName)}, nor its bottom ${bound('bottom', v.bottomMeets, v.bottomName)}.`,
      remedy: capital([...ways, 'or state the volume as a number.'].join(', ')),
    };
  },
};

type Value = ProblemValues[string] | undefined;

/** Where a chamber's bound ends: outwards at the cabinet or the next chamber, inwards at what stands in it. */
function bound(which: 'top' | 'bottom', meets: Value, name: Value): string {
  const [outwards, inwards] = which === 'top' ? ['above', 'below'] : ['below', 'above'];
  if (meets === 'cabinet') return `${outwards} the inside of the cabinet`;
  if (meets === 'chamber') return `${outwards} where chamber “${name}” begins`;
  return `${inwards} the centre of ${name}`;
}

const wayPast = (meets: Value, name: Value): string => {
  if (meets === 'cabinet') return '';
  return meets === 'chamber' ? `make chamber “${name}” smaller` : `move ${name}`;
};
