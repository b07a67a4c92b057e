import type { Command } from '../../../core/document/command.ts';
import { FieldRow } from '../../fields/FieldRow.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';

interface Loss {
  readonly q: number;
  readonly atHz: number;
}

/** A loss as its Q and the frequency at which that holds; an emptied Q takes the loss away. */
export function LossFields({
  name,
  about,
  of,
  loss,
  command,
}: {
  readonly name: string;
  /** What the loss is, in plain words. */
  readonly about: string;
  /** Whose loss it is, for the accessible name. */
  readonly of: string;
  readonly loss: Loss | null;
  readonly command: (loss: Loss | null) => Command;
}) {
  const atHz = loss?.atHz ?? 40;
  return (
    <FieldRow name={name} about={about}>
      <span>
        <QuantityField
          label={`${name} of ${of}`}
          kind="plain"
          stepping={{ by: 'digit' }}
          value={loss?.q ?? null}
          absent="none"
          command={(q) => command({ q, atHz })}
          clear={() => command(null)}
        />
        {loss ? (
          <>
            at
            <QuantityField
              label={`Frequency at which ${name} of ${of} holds`}
              kind="frequency"
              value={loss.atHz}
              command={(hz) => command({ q: loss.q, atHz: hz })}
            />
          </>
        ) : null}
      </span>
    </FieldRow>
  );
}
