import { FieldRow } from '../../fields/FieldRow.tsx';
import { QuantityField, type QuantityFieldProps } from '../../fields/QuantityField.tsx';

/** A length of the cabinet with its name, in millimetres in the metric system. */
export function LengthField({
  name,
  ...props
}: Omit<QuantityFieldProps, 'kind' | 'metricUnit'> & { readonly name: string }) {
  return (
    <FieldRow name={name}>
      <QuantityField kind="length" metricUnit="mm" {...props} />
    </FieldRow>
  );
}
