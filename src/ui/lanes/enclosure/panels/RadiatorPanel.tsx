import type { Command } from '../../../../core/document/command.ts';
import type { PassiveRadiator } from '../../../../core/document/schema.ts';
import type { QuantityKind } from '../../../../core/units/quantityKind.ts';
import { FieldRow } from '../../../fields/FieldRow.tsx';
import { QuantityField } from '../../../fields/QuantityField.tsx';
import { TextField } from '../../../fields/TextField.tsx';
import { RefusingButton } from '../../RefusingButton.tsx';
import { ChamberChoice } from './ChamberChoice.tsx';
import { MassWish } from './MassWish.tsx';
import { PlaceFields } from './PlaceFields.tsx';

type Changes = Partial<Omit<PassiveRadiator, 'id'>>;

/** All about one kind of passive radiator: its sheet, what is added to it, its place, and the mass that a wished tuning needs. */
export function RadiatorPanel({ radiator }: { readonly radiator: PassiveRadiator }) {
  const { id, name } = radiator;
  const set = (changes: Changes): Command => ({ type: 'set-radiator', id, changes });
  const value = (
    shown: string,
    label: string,
    kind: QuantityKind,
    present: number | null,
    changes: (next: number) => Changes,
    more: { readonly least?: number; readonly about?: string } = {},
  ) => (
    <FieldRow name={shown} {...(more.about === undefined ? {} : { about: more.about })}>
      <QuantityField
        label={`${label} of ${name}`}
        kind={kind}
        {...(kind === 'length' ? { metricUnit: 'mm' } : {})}
        value={present}
        least={more.least ?? 0}
        command={(next) => set(changes(next))}
      />
    </FieldRow>
  );
  const radiusM = radiator.outerDiameterM / 2;
  return (
    <div className="enclosure-panel">
      <TextField
        label="Name of the passive radiator"
        value={name}
        command={(next) => set({ name: next })}
        longest={80}
      />
      <div className="enclosure-panel-columns">
        <div>
          {value('Sd', 'Cone area', 'area', radiator.sdM2, (sdM2) => ({ sdM2 }), { least: 1e-4 })}
          {value('Mms', 'Moving mass', 'mass', radiator.mmsKg, (mmsKg) => ({ mmsKg }), {
            least: 1e-4,
            about: 'Moving mass as the sheet gives it, without what is added',
          })}
          {value('fs', 'Resonance in free air', 'frequency', radiator.fsHz, (fsHz) => ({ fsHz }), {
            least: 1,
            about: 'Resonance in free air as the sheet gives it, without what is added',
          })}
          {value('Qms', 'Mechanical Q', 'plain', radiator.qms, (qms) => ({ qms }), { least: 0.1 })}
          {value('added mass', 'Added mass', 'mass', radiator.addedMassKg, (addedMassKg) => ({ addedMassKg }), {
            about: 'Screwed or glued to each radiator',
          })}
          <FieldRow name="Xmax" about="How far it may move, one way, peak">
            <QuantityField
              label={`Xmax of ${name}`}
              kind="length"
              metricUnit="mm"
              value={radiator.xmaxM}
              absent="not stated"
              least={1e-4}
              command={(xmaxM) => set({ xmaxM })}
              clear={() => set({ xmaxM: null })}
            />
          </FieldRow>
        </div>
        <div>
          <FieldRow name="how many">
            <QuantityField
              label={`Number of ${name}`}
              kind="plain"
              stepping={{ by: 'linear', step: 1 }}
              value={radiator.count}
              least={1}
              greatest={8}
              command={(count) => set({ count: Math.round(count) })}
            />
          </FieldRow>
          {value(
            'diameter',
            'Outer diameter',
            'length',
            radiator.outerDiameterM,
            (outerDiameterM) => ({ outerDiameterM }),
            {
              least: 0.02,
            },
          )}
          <ChamberChoice of={name} chamberId={radiator.chamberId} command={(chamberId) => set({ chamberId })} />
          <PlaceFields
            of={name}
            place={radiator}
            footprint={{ halfWidthM: radiusM, halfHeightM: radiusM }}
            set={({ face, xM, yM }) => set({ face, xM, yM })}
          />
        </div>
      </div>
      <MassWish radiator={radiator} />
      <RefusingButton command={() => ({ type: 'remove-radiator', id })}>remove this radiator</RefusingButton>
    </div>
  );
}
