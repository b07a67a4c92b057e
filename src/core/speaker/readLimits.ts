import { FILL_MATERIALS } from '../acoustics/fill/index.ts';
import { portFlaresM } from '../acoustics/index.ts';
import type { Enclosure, Filling, Project } from '../document/schema.ts';
import { type Place, type Problem, problem } from '../messages/problem.ts';
import type { ModelPort } from './model.ts';

/** Packed beyond this share of its own solid a filling is a board, and the formulas for fibres in air end. */
const MOST_SOLID = 0.25;

/** Ports whose roundings or bends are longer than they are themselves. */
export function openingProblems({ enclosure }: Project, ports: readonly ModelPort[]): Problem[] {
  return enclosure.ports.flatMap((port, i) => {
    const place = { kind: 'port', id: port.id } as const;
    const flaresM = portFlaresM(port);
    if (flaresM > port.lengthM) {
      return [problem('speaker.roundings-too-long', place, { flaresM, lengthM: port.lengthM })];
    }
    const { effectiveLengthM } = ports[i]!;
    return effectiveLengthM > 0 ? [] : [problem('speaker.bends-too-long', place, { lengthM: port.lengthM })];
  });
}

/** Fillings packed so tightly that they are no fibres in air any more. */
export function fillingProblems({ chambers, lines }: Pick<Enclosure, 'chambers' | 'lines'>): Problem[] {
  const check = (filling: Filling | null, place: Place): Problem[] => {
    const material = FILL_MATERIALS.find(({ id }) => id === filling?.material);
    if (filling === null || material === undefined) return [];
    const mostKgPerM3 = MOST_SOLID * material.solidDensityKgPerM3;
    if (filling.densityKgPerM3 <= mostKgPerM3) return [];
    const { densityKgPerM3 } = filling;
    const { least, most } = material.bulkDensityKgPerM3;
    return [problem('speaker.filling-too-dense', place, { densityKgPerM3, mostKgPerM3, least, most })];
  };
  return [
    ...chambers.flatMap(({ id, filling }) => check(filling, { kind: 'chamber', id })),
    ...lines.flatMap(({ id, filling }) => check(filling, { kind: 'duct', id })),
  ];
}
