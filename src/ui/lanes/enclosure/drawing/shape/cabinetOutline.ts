import { clearHeights, clearWidthM, frontSetbackM, thicknessOfM } from '../../../../../core/document/insideSpace.ts';
import type { Enclosure } from '../../../../../core/document/schema.ts';
import { innerFrontM } from './innerFront.ts';

/** A corner of an outline: in the side view behind the foremost edge and up, in the section behind it and across; m. */
export interface Corner {
  readonly behindM: number;
  readonly otherM: number;
}

export interface CabinetOutline {
  readonly outer: readonly Corner[];
  readonly inner: readonly Corner[];
}

/** Outside and inside of the cabinet cut along its middle, seen from the side. */
export function sideOutline(enclosure: Enclosure): CabinetOutline {
  const { heightM, depthM } = enclosure;
  const { bottomM, topM } = clearHeights(enclosure);
  const innerBackM = depthM - thicknessOfM(enclosure, 'back');
  return {
    outer: [
      { behindM: frontSetbackM(enclosure, 0), otherM: 0 },
      { behindM: frontSetbackM(enclosure, heightM), otherM: heightM },
      { behindM: depthM, otherM: heightM },
      { behindM: depthM, otherM: 0 },
    ],
    inner: [
      { behindM: innerFrontM(enclosure, bottomM), otherM: bottomM },
      { behindM: innerFrontM(enclosure, topM), otherM: topM },
      { behindM: innerBackM, otherM: topM },
      { behindM: innerBackM, otherM: bottomM },
    ],
  };
}

/** Outer width of the cabinet at a depth behind its foremost edge, m. */
export const outerWidthM = ({ widthM, depthM, wood }: Enclosure, behindM: number): number =>
  widthM - ((widthM - (wood.backWidthM ?? widthM)) * behindM) / depthM;

/** Outside and inside of the cabinet cut level at a height, seen from above. Unequal sides shift the inside. */
export function sectionOutline(enclosure: Enclosure, yM: number): CabinetOutline {
  const frontM = frontSetbackM(enclosure, yM);
  const innerM = innerFrontM(enclosure, yM);
  const innerBackM = enclosure.depthM - thicknessOfM(enclosure, 'back');
  const across = (behindM: number, sign: 1 | -1) => (sign * outerWidthM(enclosure, behindM)) / 2;
  const shiftM = (thicknessOfM(enclosure, 'left') - thicknessOfM(enclosure, 'right')) / 2;
  const inside = (behindM: number, sign: 1 | -1) => shiftM + (sign * clearWidthM(enclosure, behindM)) / 2;
  const ring = (fromM: number, toM: number, at: typeof across): Corner[] => [
    { behindM: fromM, otherM: at(fromM, -1) },
    { behindM: toM, otherM: at(toM, -1) },
    { behindM: toM, otherM: at(toM, 1) },
    { behindM: fromM, otherM: at(fromM, 1) },
  ];
  return { outer: ring(frontM, enclosure.depthM, across), inner: ring(innerM, innerBackM, inside) };
}
