import { QuantityField } from '../../../../fields/QuantityField.tsx';
import type { PlacedDimension } from './placeDimensions.ts';

/** Lines and ticks of the dimensions that are shown. */
export function DimensionLines({ placed }: { readonly placed: readonly PlacedDimension[] }) {
  return <path className="cabinet-dimension" d={placed.map(({ line }) => line).join('')} />;
}

/** The dimensions, edited on their lines. */
export function DimensionFields({ placed }: { readonly placed: readonly PlacedDimension[] }) {
  return placed.map(({ field, box }) => (
    <div
      key={field.key}
      className={`cabinet-field${field.backed ? ' cabinet-field-backed' : ''}`}
      style={{ left: box.leftPx + box.widthPx / 2, top: box.topPx + box.heightPx / 2 }}
    >
      <QuantityField
        label={field.label}
        kind={field.kind}
        value={field.value}
        command={field.command}
        {...(field.kind === 'length' ? { metricUnit: 'mm' } : {})}
        {...(field.least === undefined ? {} : { least: field.least })}
        {...(field.greatest === undefined ? {} : { greatest: field.greatest })}
      />
    </div>
  ));
}
