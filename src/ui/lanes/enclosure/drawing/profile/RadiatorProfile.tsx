import type { PassiveRadiator } from '../../../../../core/document/schema.ts';

/** Of its diameter, how far a passive radiator is drawn to reach in: the document states no depth for it. */
const DEPTH_SHARE = 0.14;
const RIM_M = 0.005;

/** A passive radiator cut along its axis, from the origin to the right: rim, cone, and a block for added mass. */
export function RadiatorProfile({
  radiator,
  pxPerM,
  offM = 0,
}: {
  readonly radiator: PassiveRadiator;
  readonly pxPerM: number;
  /** How far beside its axis it is cut. */
  readonly offM?: number;
}) {
  const chord = (radiusM: number) => Math.sqrt(Math.max(0, radiusM ** 2 - offM ** 2)) * pxPerM;
  const full = chord(radiator.outerDiameterM / 2);
  const moving = chord(Math.min(Math.sqrt(radiator.sdM2 / Math.PI), 0.47 * radiator.outerDiameterM));
  const deep = DEPTH_SHARE * radiator.outerDiameterM * pxPerM;
  const rim = RIM_M * pxPerM;
  const block = moving * 0.35;
  return (
    <g className="cabinet-radiator">
      <title>{`${radiator.name || 'Passive radiator'}; its depth is not stated`}</title>
      <path d={`M0,${-moving}L${deep},${-block}V${block}L0,${moving}Z`} />
      <rect x={-rim} y={-full} width={rim} height={2 * full} />
      {radiator.addedMassKg > 0 ? (
        <rect
          className="cabinet-magnet"
          x={deep}
          y={-block * 0.7}
          width={Math.max(2, 0.01 * pxPerM)}
          height={block * 1.4}
        />
      ) : null}
    </g>
  );
}
