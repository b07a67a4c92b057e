import { frontSetbackM } from '../../../../../core/document/insideSpace.ts';
import type { Enclosure, Listening } from '../../../../../core/document/schema.ts';
import type { Way } from '../../../../waysInOrder.ts';

export interface CabinetHints {
  /** Centre to centre of tweeter and the way next to it, and how close their frames would let them be; null: close enough. */
  readonly apartM: number | null;
  readonly closestM: number;
  readonly upper: string;
  readonly lower: string;
  /** How far the tweeter is below the ears; null: near enough. The stand that levels them; null: no stand can. */
  readonly offM: number | null;
  readonly standM: number | null;
  /** Ways whose acoustic centre lies before the front that leans back, with where it would lie behind it, m along z. */
  readonly floating: readonly { readonly speakerId: string; readonly name: string; readonly zM: number }[];
}

/** Wood between two frames that nobody grudges, and heights that count as level. */
const FREE_M = 0.04;
const LEVEL_M = 0.1;
/** How far before its front an acoustic centre may seem to lie. */
const BEFORE_M = 0.01;

/** Where the customs of the trade would have things otherwise: tweeter and mid close together, the tweeter at ear height. */
export function hintsFor(
  enclosure: Enclosure,
  ways: readonly Way[],
  listening: Pick<Listening, 'heightM' | 'standHeightM'>,
): CabinetHints {
  const { mounts, heightM } = enclosure;
  const placed = ways.flatMap((way) => {
    const mount = mounts.find(({ partId }) => partId === way.speakerId);
    return mount && mount.frontChamberId === null && way.driver ? [{ ...way, driver: way.driver, mount }] : [];
  });
  const tweeter = placed.find(({ driver }) => driver.role === 'tweeter');
  const floating = placed.flatMap(({ speakerId, name, mount }) => {
    const setbackM = frontSetbackM(enclosure, mount.yM);
    const isBefore = -mount.acousticCentreZM < setbackM - BEFORE_M;
    return isBefore ? [{ speakerId, name, zM: mount.acousticCentreZM - setbackM }] : [];
  });
  const none: CabinetHints = { apartM: null, closestM: 0, upper: '', lower: '', offM: null, standM: null, floating };
  if (!tweeter) return none;
  const offM = listening.heightM - listening.standHeightM - tweeter.mount.yM;
  const standM = Math.round((listening.heightM - tweeter.mount.yM) * 1000) / 1000;

  const level =
    Math.abs(offM) <= LEVEL_M ? {} : { offM, standM: standM >= 0 && standM + heightM < 2.2 ? standM : null };
  const partner =
    placed.find(({ driver }) => driver.role === 'mid') ??
    placed.find(({ driver }) => driver.role === 'full-range' || driver.role === 'woofer');
  if (!partner) return { ...none, ...level };
  const apartM = Math.hypot(partner.mount.xM - tweeter.mount.xM, partner.mount.yM - tweeter.mount.yM);
  const closestM = (partner.driver.outerDiameterM + tweeter.driver.outerDiameterM) / 2;
  const close = apartM - closestM > FREE_M ? { apartM, closestM, upper: 'Tweeter', lower: partner.name } : {};
  return { ...none, ...level, ...close };
}
