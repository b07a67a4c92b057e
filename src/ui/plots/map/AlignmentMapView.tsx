import { type PointerEvent, useMemo, useRef, useState } from 'react';
import type { AlignmentMap, PublishedPoint, PublishedPoints } from '../../../core/design/alignmentMap/index.ts';
import type { UnitSystem } from '../../../core/units/quantityKind.ts';
import { useBoxSize } from '../../lanes/useBoxSize.ts';
import './AlignmentMapView.css';
import { aroundDot, type MapBox, MapDot } from './MapDot.tsx';
import { MapLines } from './MapLines.tsx';
import { MapMarks, MarkButtons } from './MapMarks.tsx';
import { MAP_QUANTITIES, volumeText } from './mapQuantities.ts';
import { mapReadout, readoutText } from './mapReadout.ts';
import { mapScales } from './mapScales.ts';
import { PublishedTable } from './PublishedTable.tsx';
import { markBoxes, placeMarks } from './placeMarks.ts';
import { SealedMark } from './SealedMark.tsx';

/** Below this width nothing can be read off a map. */
const LEAST_PX = 120;
/** A press that moves further is no click. */
const CLICK_PX = 4;

/**
 * Volume against tuning for one driver: contours of one quantity at a time, the published boxes, the present one to be moved.
 *
 * `onMove` comes with every step of a drag, `onCommit` once at its end and after each key; both stay within the map. A published vented
 * box, and a place that is clicked, is taken with both at once; `onPickSealed`, where given, takes a sealed one; `onCancel`, where given, puts back
 * what a drag began from. `present` null: none with a port; `sealedM3` is then the sealed one, where there is one. Volumes are apparent.
 */
export function AlignmentMapView({
  map,
  points,
  present,
  sealedM3 = null,
  units,
  onMove,
  onCommit,
  onCancel,
  onPickSealed,
}: {
  map: AlignmentMap;
  points: PublishedPoints;
  present: MapBox | null;
  sealedM3?: number | null;
  units: UnitSystem;
  onMove(volumeM3: number, tuningHz: number): void;
  onCommit(volumeM3: number, tuningHz: number): void;
  onCancel?: () => void;
  onPickSealed?: (volumeM3: number) => void;
}) {
  const [body, size] = useBoxSize<HTMLDivElement>();
  const drawing = useRef<SVGSVGElement>(null);
  const pressed = useRef<{ readonly x: number; readonly y: number } | null>(null);
  const [chosen, setChosen] = useState(MAP_QUANTITIES[0]!);
  const [pointed, setPointed] = useState<MapBox | null>(null);
  const scales = useMemo(
    () => (size.widthPx < LEAST_PX || size.heightPx < LEAST_PX ? null : mapScales(map, size, units)),
    [map, size, units],
  );
  const marks = useMemo(() => (scales === null ? [] : placeMarks(points.points, scales)), [points, scales]);
  const taken = useMemo(() => {
    const boxes = markBoxes(marks);
    if (scales === null || present === null) return boxes;
    return [...boxes, aroundDot(scales.volume.toPx(present.volumeM3), scales.tuning.toPx(present.tuningHz))];
  }, [marks, scales, present]);

  const shown = pointed ?? present;
  const readout = shown && mapReadout(map, shown.volumeM3, shown.tuningHz, units);
  const toLocal = (event: PointerEvent) => {
    const box = drawing.current?.getBoundingClientRect();
    return { x: event.clientX - (box?.left ?? 0), y: event.clientY - (box?.top ?? 0) };
  };
  const boxAt = (event: PointerEvent): MapBox | null => {
    if (scales === null) return null;
    const { x, y } = toLocal(event);
    const { area } = scales;
    const isInside = x >= area.left && x <= area.right && y >= area.top && y <= area.bottom;
    return isInside ? { volumeM3: scales.volume.toHz(x), tuningHz: scales.tuning.toHz(y) } : null;
  };
  const take = ({ volumeM3, tuningHz }: MapBox) => {
    onMove(volumeM3, tuningHz);
    onCommit(volumeM3, tuningHz);
  };
  const canPick = ({ tuningHz }: PublishedPoint): boolean => tuningHz !== null || onPickSealed !== undefined;
  const pick = ({ volumeM3, tuningHz }: PublishedPoint) => {
    if (tuningHz === null) {
      onPickSealed?.(volumeM3);
      return;
    }
    take({ volumeM3, tuningHz });
  };

  return (
    <figure className="map">
      <fieldset className="map-quantities" aria-label="Contours to draw">
        {MAP_QUANTITIES.map((quantity) => (
          <button
            key={quantity.id}
            type="button"
            className="frame-button"
            aria-pressed={quantity.id === chosen.id}
            onClick={() => setChosen(quantity)}
          >
            {quantity.button}
          </button>
        ))}
      </fieldset>
      <p className="map-explains">{chosen.explains}</p>
      <div className="map-body" ref={body}>
        {scales && (
          <svg
            ref={drawing}
            width={size.widthPx}
            height={size.heightPx}
            role="img"
            aria-label="Map of vented boxes: volume across, tuning upwards"
            onPointerMove={(event) => setPointed(boxAt(event))}
            onPointerDown={(event) => {
              pressed.current = event.button === 0 ? { x: event.clientX, y: event.clientY } : null;
            }}
            onPointerUp={(event) => {
              const from = pressed.current;
              pressed.current = null;
              const box = boxAt(event);
              if (from === null || box === null) return;
              if (Math.hypot(event.clientX - from.x, event.clientY - from.y) < CLICK_PX) take(box);
            }}
            onPointerLeave={() => setPointed(null)}
          >
            <g className="map-axes">
              {scales.volumeTicks.map(({ px, label }) => (
                <g key={label}>
                  <line x1={px} x2={px} y1={scales.area.top} y2={scales.area.bottom} />
                  <text x={px} y={scales.area.bottom} dy="1.2em" textAnchor="middle">
                    {label}
                  </text>
                </g>
              ))}
              {scales.tuningTicks.map(({ px, label }) => (
                <g key={label}>
                  <line x1={scales.area.left} x2={scales.area.right} y1={px} y2={px} />
                  <text x={scales.area.left} y={px} dx="-0.4em" dy="0.35em" textAnchor="end">
                    {label}
                  </text>
                </g>
              ))}
              <path d={`M${scales.area.left} ${scales.area.bottom}H${scales.area.right}`} className="map-sealed-edge" />
              <text x={scales.area.right} y={scales.area.bottom} dy="2.5em" textAnchor="end">
                volume, {scales.volumeUnit}
              </text>
              <text x={0} y={scales.area.bottom} dy="2.5em">
                tuning, Hz · lower edge: sealed
              </text>
            </g>
            <MapLines map={map} quantity={chosen} scales={scales} taken={taken} units={units} />
            <MapMarks marks={marks} />
            {sealedM3 !== null && <SealedMark x={scales.volume.toPx(sealedM3)} scales={scales} />}
          </svg>
        )}
        {scales && (
          <MarkButtons
            marks={marks}
            canPick={canPick}
            pick={pick}
            point={(at) => setPointed(at?.tuningHz == null ? null : { volumeM3: at.volumeM3, tuningHz: at.tuningHz })}
          />
        )}
        {scales && present && (
          <MapDot
            present={present}
            scales={scales}
            text={readoutText(mapReadout(map, present.volumeM3, present.tuningHz, units))}
            toLocal={toLocal}
            onMove={onMove}
            onCommit={onCommit}
            {...(onCancel ? { onCancel } : {})}
          />
        )}
      </div>
      <figcaption className="map-readout" data-testid="map-readout">
        {readout === null ? (
          `${sealedM3 === null ? 'No box yet' : `Present box: ${volumeText(sealedM3, units)}, sealed`}: take a published one, or click into the map.`
        ) : (
          <>
            <span>
              {pointed ? 'Here' : 'Present box'}: {readout.box}
            </span>
            {readout.figures.map(({ name, value }) => (
              <span key={name}>
                <span className="map-name">{name}</span> {value}
              </span>
            ))}
          </>
        )}
      </figcaption>
      <PublishedTable published={points} units={units} pick={pick} canPick={canPick} />
    </figure>
  );
}
