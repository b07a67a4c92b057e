import type { Driver } from '../../../core/document/schema.ts';

/** The drawing shows this much width, so that a woofer, a mid and a tweeter keep their true proportions to one another. */
const LEAST_SPAN_M = 0.26;

/** A driver seen from the front, to one scale for all: frame, surround, cone or dome. Decoration: the card says it in words. */
export function ConeDrawing({ driver, spanM }: { readonly driver: Driver; readonly spanM: number }) {
  const span = Math.max(LEAST_SPAN_M, spanM);
  const unit = 100 / span;
  const frame = (driver.outerDiameterM / 2) * unit;
  const moving = Math.min(frame * 0.93, Math.sqrt((driver.entered.sdM2 ?? 0) / Math.PI) * unit || frame * 0.75);
  const dome = driver.shape === 'dome';
  return (
    <svg className="cone-drawing" viewBox="-52 -52 104 104" aria-hidden="true">
      <circle className="cone-drawing-frame" r={frame} />
      <circle className="cone-drawing-edge" r={Math.min(frame * 0.97, moving * 1.08)} />
      {dome ? null : <circle className="cone-drawing-rim" r={moving * 0.94} />}
      <circle className="cone-drawing-middle" r={dome ? moving * 0.92 : moving * 0.34} />
    </svg>
  );
}
