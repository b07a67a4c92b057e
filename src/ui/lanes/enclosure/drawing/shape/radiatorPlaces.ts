import type { Enclosure, PassiveRadiator } from '../../../../../core/document/schema.ts';
import type { BafflePlace, Footprint } from '../../keepOnBaffle.ts';

/** Between the frames of equal radiators, as a share of one's diameter. */
const GAP_SHARE = 0.06;

/** Centres of equal passive radiators about their common place: side by side where that fits the width, else above one another; m. */
export function radiatorPlaces(radiator: PassiveRadiator, { widthM }: Pick<Enclosure, 'widthM'>): BafflePlace[] {
  const pitch = radiator.outerDiameterM * (1 + GAP_SHARE);
  const abreast = isAbreast(radiator, widthM);
  return Array.from({ length: radiator.count }, (_, k) => {
    const off = (k - (radiator.count - 1) / 2) * pitch;
    return { xM: radiator.xM + (abreast ? off : 0), yM: radiator.yM + (abreast ? 0 : off) };
  });
}

/** What they cover of their face together. */
export function radiatorFootprint(radiator: PassiveRadiator, { widthM }: Pick<Enclosure, 'widthM'>): Footprint {
  const one = radiator.outerDiameterM / 2;
  const all = one + ((radiator.count - 1) / 2) * radiator.outerDiameterM * (1 + GAP_SHARE);
  return isAbreast(radiator, widthM) ? { halfWidthM: all, halfHeightM: one } : { halfWidthM: one, halfHeightM: all };
}

const isAbreast = ({ count, outerDiameterM }: PassiveRadiator, widthM: number): boolean =>
  outerDiameterM * (count + (count - 1) * GAP_SHARE) <= widthM;
