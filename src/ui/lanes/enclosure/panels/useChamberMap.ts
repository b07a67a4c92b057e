import { useState } from 'react';
import { alignmentMap } from '../../../../core/design/alignmentMap/alignmentMap.ts';
import { mapAxes } from '../../../../core/design/alignmentMap/mapAxes.ts';
import { publishedPoints } from '../../../../core/design/alignmentMap/publishedPoints.ts';
import { type ChamberMap, mapOfChamber } from '../../../../core/design/mapOfChamber.ts';
import type { Chamber } from '../../../../core/document/schema.ts';
import type { Problem } from '../../../../core/messages/problem.ts';
import type { MapBox } from '../../../plots/map/index.ts';
import { useWorkbench } from '../../../useWorkbench.ts';

const STEPS = 60;
const WISHED_QTCS = [1];
/** The dot may stand on the very edge. */
const EDGE = 1.001;

type Axes = ReturnType<typeof mapAxes>;

/** The present box of a chamber for the map: `sealed` where no port tunes it. */
export interface PresentBox {
  readonly vented: MapBox | null;
  readonly sealedM3: number | null;
}

/** Map, published boxes and present box of a chamber; worked out anew only where what it is drawn from changes, never while the dot moves. */
export function useChamberMap(chamber: Chamber) {
  const project = useWorkbench((s) => s.project);
  const tuningHz = useWorkbench(
    (s) => s.evaluation?.keyFigures.chambers.find(({ id }) => id === chamber.id)?.tuningHz ?? null,
  );
  const read = mapOfChamber(project, chamber);
  const made = read.ok ? read.value : null;
  const present = presentOf(made, tuningHz);
  const axes = useAxes(made, present.vented);
  const map = useKept(made === null || axes === null ? '' : keyOf(made, axes), () =>
    made === null || axes === null ? null : alignmentMap({ ...made.input, ...axes }),
  );
  const points = useKept(made === null ? '' : JSON.stringify([made.driver, made.ql]), () =>
    made === null ? null : publishedPoints({ driver: made.driver, ql: made.ql, wishedQtcs: WISHED_QTCS }),
  );
  const problems: readonly Problem[] = !read.ok ? read.problems : map?.ok === false ? map.problems : [];
  return { map: map?.ok ? map.value : null, points, present, problems };
}

function presentOf(made: ChamberMap | null, tuningHz: number | null): PresentBox {
  if (made === null || !(made.volumeM3 > 0)) return { vented: null, sealedM3: null };
  return made.port === null || tuningHz === null
    ? { vented: null, sealedM3: made.volumeM3 }
    : { vented: { volumeM3: made.volumeM3, tuningHz }, sealedM3: null };
}

/** Axes round the published boxes and the present one; they stay while that moves about inside them. */
function useAxes(made: ChamberMap | null, present: MapBox | null): Axes | null {
  const driver = made === null ? '' : JSON.stringify([made.driver.fsHz, made.driver.vasM3]);
  const [kept, setKept] = useState<{ readonly driver: string; readonly axes: Axes } | null>(null);
  if (made === null) return null;
  if (kept !== null && kept.driver === driver && holds(kept.axes, present)) return kept.axes;
  const axes = mapAxes(made.driver, present, STEPS);
  setKept({ driver, axes });
  return axes;
}

const holds = ({ volumesM3, tuningsHz }: Axes, present: MapBox | null): boolean =>
  present === null || (within(present.volumeM3, volumesM3) && within(present.tuningHz, tuningsHz));
const within = (value: number, axis: Float64Array): boolean => value * EDGE >= axis[0]! && value <= axis.at(-1)! * EDGE;

/** A value that is made anew when its key changes. */
function useKept<T>(key: string, make: () => T): T {
  const [kept, setKept] = useState(() => ({ key, value: make() }));
  if (kept.key === key) return kept.value;
  const next = { key, value: make() };
  setKept(next);
  return next.value;
}

/** All that the map depends on: not the port's length, which is what it answers. */
const keyOf = ({ input }: ChamberMap, { volumesM3, tuningsHz }: Axes): string => {
  const { port, ...rest } = input;
  const { shape, innerEnd, outerEnd, innerFlareM, outerFlareM, bends, count } = port;
  const ends = [volumesM3[0], volumesM3.at(-1), tuningsHz[0], tuningsHz.at(-1)];
  return JSON.stringify([rest, shape, innerEnd, outerEnd, innerFlareM, outerFlareM, bends, count, ends]);
};
