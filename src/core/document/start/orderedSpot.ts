import type { Driver, Project } from '../schema.ts';
import { circlesOnFront, MARGIN_M } from './freeSpot.ts';
import { newDriver } from './newDriver.ts';

/** From the bottom of a front upwards, as loudspeakers are usually built (common practice, no source). */
const RANK: Readonly<Record<Driver['role'], number>> = { woofer: 0, mid: 1, 'full-range': 1, tweeter: 2 };

const STEP_M = 0.005;
const TWEETER_ROOM_M = newDriver('tweeter', '').outerDiameterM + MARGIN_M;
const EPSILON_M = 1e-9;

interface Seat {
  readonly partId: string | null;
  readonly rank: number;
  readonly xM: number;
  readonly yM: number;
  readonly radiusM: number;
}

export interface OrderedSpot {
  readonly yM: number;
  /** What has to move down for it, and to which height. */
  readonly moves: readonly { readonly partId: string; readonly yM: number }[];
}

/**
 * Height on the front's centre line for a new driver, in the usual order: tweeters above mids and full-range drivers, those
 * above woofers. A cone that comes before any tweeter leaves room for one above itself where it can. Where the order has
 * no free place, what belongs below moves down just far enough; where that does not do either, it overlaps in the right
 * order. Metres; null where the order says nothing.
 * @example orderedSpot(project, newDriver('tweeter', 'driver-2'))
 */
export function orderedSpot(
  project: Project,
  { role, outerDiameterM }: Pick<Driver, 'role' | 'outerDiameterM'>,
): OrderedSpot | null {
  const { heightM, widthM } = project.enclosure;
  const seats = circlesOnFront(project).map((circle): Seat => ({ ...circle, rank: rankOf(project, circle.partId) }));
  const rank = RANK[role];
  const radiusM = outerDiameterM / 2;
  const reachM = Math.min(radiusM + MARGIN_M, widthM / 2);
  const drivers = seats.filter((seat) => seat.partId !== null);
  const stays = seats.filter((seat) => seat.partId === null || seat.rank >= rank);
  const lowest = Math.max(reachM, ...drivers.filter((seat) => seat.rank < rank).map(({ yM }) => yM + STEP_M));
  const highest = Math.min(
    heightM - reachM,
    ...drivers.filter((seat) => seat.rank > rank).map(({ yM }) => yM - STEP_M),
  );
  const free = (among: readonly Seat[], from: number, to: number): number | null => {
    for (let k = 0; from + k * STEP_M <= to + EPSILON_M; k++) {
      const yM = rank === 0 ? from + k * STEP_M : to - k * STEP_M;
      if (among.every((seat) => areClear(seat, { xM: 0, yM, radiusM }))) return toMillimetre(yM);
    }
    return null;
  };
  const awaitsTweeter = rank === 1 && drivers.every((seat) => seat.rank < 2);
  const found = (awaitsTweeter ? free(seats, lowest, highest - TWEETER_ROOM_M) : null) ?? free(seats, lowest, highest);
  if (found !== null) return { yM: found, moves: [] };
  if (rank === 0) return null;
  const above = free(stays, reachM, highest);
  const moved = above === null ? null : pushedDown(seats, { partId: null, rank, xM: 0, yM: above, radiusM }, stays);
  if (moved !== null) return moved;
  // Nothing makes room: at least the order is right, and a finding says what overlaps.
  if (drivers.some((seat) => seat.rank === rank)) return null;
  const isBetween = drivers.some((seat) => seat.rank > rank);
  return { yM: toMillimetre(isBetween ? (lowest + highest) / 2 : highest), moves: [] };
}

/** All that does not stay moved down, from the top one on, until nothing overlaps; null where the front ends first. */
function pushedDown(seats: readonly Seat[], added: Seat, stays: readonly Seat[]): OrderedSpot | null {
  const placed: Seat[] = [...stays, added];
  const moves: { partId: string; yM: number }[] = [];
  const movable = seats.filter((seat) => !stays.includes(seat)).sort((a, b) => b.yM - a.yM);
  for (const seat of movable) {
    let yM = Math.min(seat.yM, added.yM - 1e-3);
    while (!placed.every((other) => areClear(other, { ...seat, yM }))) {
      yM = toMillimetre(yM - 1e-3);
      if (yM < seat.radiusM + MARGIN_M) return null;
    }
    if (yM !== seat.yM && seat.partId !== null) moves.push({ partId: seat.partId, yM });
    placed.push({ ...seat, yM });
  }
  return { yM: added.yM, moves };
}

function rankOf({ network, drivers }: Project, partId: string | null): number {
  const part = network.parts.find((candidate) => candidate.id === partId);
  const driver = part?.kind === 'speaker' ? drivers.find((candidate) => candidate.id === part.driverId) : undefined;
  return driver ? RANK[driver.role] : 0;
}

type Circle = Pick<Seat, 'xM' | 'yM' | 'radiusM'>;
const areClear = (a: Circle, b: Circle): boolean =>
  Math.hypot(a.xM - b.xM, a.yM - b.yM) >= a.radiusM + b.radiusM + MARGIN_M - EPSILON_M;
const toMillimetre = (m: number): number => Math.round(m * 1000) / 1000;
