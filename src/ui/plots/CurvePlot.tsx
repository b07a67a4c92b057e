import { useEffect, useRef, useState } from 'react';
import './CurvePlot.css';
import { type CursorPin, FrequencyCursor } from './FrequencyCursor.tsx';
import { frequencyText } from './frequencyText.ts';
import { PlotAxes } from './PlotAxes.tsx';
import type { PlotFrame } from './PlotPainter.ts';
import { PlotTable } from './PlotTable.tsx';
import type { Picture } from './picture.ts';
import { usePlotPainter } from './usePlotPainter.ts';
import type { PlotView } from './view.ts';
import { writeFrame } from './writeFrame.ts';

/** How long a picture must have been still before its table is written: the table is not worth a frame of a drag. */
const TABLE_AFTER_MS = 400;

/**
 * One plot: curves on a canvas, numbers and names on an SVG above it, values under the cursor in the line at its head.
 * The frame is rendered by React; what moves with every edit is written by the painter.
 */
export function CurvePlot({ view, pin }: { view: PlotView; pin: CursorPin }) {
  const root = useRef<HTMLElement>(null);
  const body = useRef<HTMLDivElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const cursor = useRef<HTMLDivElement>(null);
  const [picture, setPicture] = useState<Picture | null>(null);
  const timer = useRef(0);
  useEffect(() => () => window.clearTimeout(timer.current), []);

  const structure = usePlotPainter(view, body, canvas, (frame: PlotFrame) => {
    if (root.current) writeFrame(root.current, cursor.current, frame);
    window.clearTimeout(timer.current);
    timer.current = window.setTimeout(() => setPicture(frame.picture), TABLE_AFTER_MS);
  });

  return (
    <figure className="plot" ref={root} data-view={view.id}>
      <figcaption className="plot-head">
        <span className="plot-title">{structure?.leftTitle}</span>
        <span className="plot-readings" data-testid={`readings-${view.id}`}>
          <span data-part="frequency" />
          {structure &&
            [...structure.curves].reverse().map(
              (curve) =>
                curve.read && (
                  <span key={curve.id} className="plot-reading" data-reading={curve.id} hidden>
                    <span style={{ color: `var(${curve.colour})` }}>{curve.shortName}</span>{' '}
                    <span data-testid={`reading-${view.id}-${curve.id}`} data-part="value" />
                  </span>
                ),
            )}
        </span>
        {structure?.rightTitle && <span className="plot-title plot-title-right">{structure.rightTitle}</span>}
      </figcaption>
      <div className="plot-body" ref={body}>
        <canvas ref={canvas} className="plot-canvas" role="img" aria-label={view.label} />
        {structure ? (
          <>
            <svg className="plot-over" aria-hidden="true" focusable="false">
              <title>{view.label}</title>
              <PlotAxes structure={structure} />
              <line
                className="plot-cursor-line"
                data-part="cursor"
                y1={structure.area.top}
                y2={structure.area.bottom}
                visibility="hidden"
              />
              {[...structure.curves, ...structure.lines].map((named) => (
                <text
                  key={named.id}
                  className="plot-label"
                  data-label={named.id}
                  style={{ fill: `var(${named.colour})` }}
                  textAnchor="middle"
                  dy="0.35em"
                  visibility="hidden"
                >
                  {'name' in named ? named.name : named.label}
                </text>
              ))}
            </svg>
            <FrequencyCursor ref={cursor} structure={structure} label={view.label} pin={pin} />
          </>
        ) : (
          structure === null && <p className="plot-empty">{view.empty}</p>
        )}
      </div>
      {structure && picture && (
        <PlotTable picture={picture} label={`${view.label}, ${frequencyText(31.5)} to 16 kHz`} />
      )}
    </figure>
  );
}
