import type { Duct } from './duct.ts';
import { ductSectionBetween } from './ductSection.ts';

/** Golden cut: the two lengths share no half wave within any band of interest. */
const NEAR_SHARE = (3 - Math.sqrt(5)) / 2;

/**
 * A duct cut in two unequal ones (38 % and 62 %), to be stamped one after the other over ONE inner node.
 *
 * Only for ducts without any loss: between two free nodes one piece is singular at its half waves (the branches between its ends grow beyond
 * measure and cancel), and the two pieces are not so at the same frequencies. The wall losses of real air are enough
 * for one piece to be exact to 1e-11 (the tests measure both).
 */
export const ductPieces = (duct: Duct): readonly [Duct, Duct] => {
  const { section, farSection, lengthM, ...rest } = duct;
  const nearM = lengthM * NEAR_SHARE;
  if (farSection === undefined)
    return [
      { ...rest, section, lengthM: nearM },
      { ...rest, section, lengthM: lengthM - nearM },
    ];
  const cut = ductSectionBetween(section, farSection, NEAR_SHARE);
  return [
    { ...rest, section, farSection: cut, lengthM: nearM },
    { ...rest, section: cut, farSection, lengthM: lengthM - nearM },
  ];
};
