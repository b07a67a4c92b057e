import type { Driver } from '../../../../../core/document/schema.ts';
import { type DriverBody, driverBody } from './driverBody.ts';

/**
 * A driver cut along its axis, drawn from the origin to the right: the outer face of its board is at x = 0, inwards is to the right.
 * `offM`: how far beside its axis the cut runs; what is narrower than that is not cut.
 */
export function DriverProfile({
  driver,
  wallM,
  pxPerM,
  offM = 0,
}: {
  readonly driver: Driver | null;
  readonly wallM: number;
  readonly pxPerM: number;
  readonly offM?: number;
}) {
  const { rim, sections, magnet, moving } = driverBody(driver, wallM);
  const chord = (radiusM: number) => Math.sqrt(Math.max(0, radiusM ** 2 - offM ** 2));
  const at = (depthM: number, radiusM: number) => `${(depthM * pxPerM).toFixed(1)},${(radiusM * pxPerM).toFixed(1)}`;
  const cut = cutBeside(sections, offM).map(({ depthM, radiusM }) => ({ depthM, radiusM: chord(radiusM) }));
  const outline = [
    ...cut.map(({ depthM, radiusM }) => at(depthM, -radiusM)),
    ...[...cut].reverse().map(({ depthM, radiusM }) => at(depthM, radiusM)),
  ];
  const bar = (fromM: number, toM: number, radiusM: number) =>
    `M${at(fromM, -radiusM)}L${at(toM, -radiusM)}L${at(toM, radiusM)}L${at(fromM, radiusM)}Z`;
  const edge = chord(moving.radiusM);
  const neck = chord(moving.radiusM * 0.3);
  // Beside the axis a cone is cut less deep.
  const deep = moving.depthM * (1 - offM / moving.radiusM) || 0;
  const face = (rim.toM + rim.fromM) / 2;
  const cone = moving.isDome
    ? `M${at(face, -edge)}Q${at(face + 2 * deep, 0)} ${at(face, edge)}`
    : `M${at(face, -edge)}L${at(face + deep, -neck)}L${at(face + deep, neck)}L${at(face, edge)}`;
  return (
    <>
      {outline.length > 0 ? <path className="cabinet-driver-side" d={`M${outline.join('L')}Z`} /> : null}
      {chord(magnet.radiusM) > 0 ? (
        <path className="cabinet-magnet" d={bar(magnet.fromM, magnet.toM, chord(magnet.radiusM))} />
      ) : null}
      <path className="cabinet-rim" d={bar(rim.fromM, rim.toM, chord(rim.radiusM))} />
      {edge > 0 ? <path className="cabinet-cone" d={cone} /> : null}
    </>
  );
}

type Section = DriverBody['sections'][number];

/** The sections as far as they are wider than a cut beside the axis, with the depth where they become narrower. */
function cutBeside(sections: readonly Section[], offM: number): Section[] {
  const end = sections.findIndex(({ radiusM }) => radiusM <= offM);
  if (end < 0 || offM === 0) return [...sections];
  const [before, after] = [sections[end - 1], sections[end]!];
  if (!before) return [];
  const share = (before.radiusM - offM) / (before.radiusM - after.radiusM);
  const depthM = before.depthM + share * (after.depthM - before.depthM);
  return [...sections.slice(0, end), { depthM, radiusM: offM }];
}
