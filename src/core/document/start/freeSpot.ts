import type { Project } from '../schema.ts';

export interface CircleOnFront {
  /** The speaker that it is; null: a port. */
  readonly partId: string | null;
  readonly xM: number;
  readonly yM: number;
  readonly radiusM: number;
}

const STEP_M = 0.005;
/** Wood between two cut-outs and to the edge, so that a router can pass. */
export const MARGIN_M = 0.01;

/**
 * Height on the front's centre line where a round thing fits beside all that is there, looked for from the top or from
 * the bottom; the middle of the front when it fits nowhere. Metres; rectangles count as their circumscribed circles.
 */
export function freeSpot(project: Project, radiusM: number, from: 'top' | 'bottom'): { xM: number; yM: number } {
  const { heightM, widthM } = project.enclosure;
  const others = circlesOnFront(project);
  const reach = Math.min(radiusM + MARGIN_M, widthM / 2);
  const count = Math.floor((heightM - 2 * reach) / STEP_M);
  for (let k = 0; k <= count; k++) {
    const yM = from === 'bottom' ? reach + k * STEP_M : heightM - reach - k * STEP_M;
    const clear = others.every(
      (other) => Math.hypot(other.xM, other.yM - yM) >= other.radiusM + radiusM + MARGIN_M - 1e-9,
    );
    if (clear) return { xM: 0, yM: Math.round(yM * 1000) / 1000 };
  }
  return { xM: 0, yM: Math.round((heightM / 2) * 1000) / 1000 };
}

/** What is on the front already, speakers first. */
export function circlesOnFront({ enclosure, network, drivers }: Project): CircleOnFront[] {
  const speakers = enclosure.mounts.flatMap(({ partId, xM, yM }) => {
    const part = network.parts.find((candidate) => candidate.id === partId);
    const driver = part?.kind === 'speaker' ? drivers.find((candidate) => candidate.id === part.driverId) : undefined;
    return driver ? [{ partId, xM, yM, radiusM: driver.outerDiameterM / 2 }] : [];
  });
  const ports = enclosure.ports
    .filter((port) => port.face === 'front')
    .map(({ shape, xM, yM }) => ({
      partId: null,
      xM,
      yM,
      radiusM: shape.kind === 'round' ? shape.diameterM / 2 : Math.hypot(shape.widthM, shape.heightM) / 2,
    }));
  return [...speakers, ...ports];
}
