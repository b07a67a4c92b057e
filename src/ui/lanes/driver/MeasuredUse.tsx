import { useId } from 'react';
import type { Command } from '../../../core/document/command.ts';
import { defaultBlendHz } from '../../../core/document/defaults.ts';
import type { Curve, Driver } from '../../../core/document/schema.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { FieldRow } from '../../fields/FieldRow.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { useWorkbench } from '../../useWorkbench.ts';
import { useWorkbenchStore } from '../../useWorkbenchStore.ts';

const MODEL = '(model)';

/** Which measured curves a driver uses above which frequency, and the way to load one. */
export function MeasuredUse({ driver }: { readonly driver: Driver }) {
  const store = useWorkbenchStore();
  const curves = useWorkbench((s) => s.project.curves);
  const inputId = useId();
  const own = curves.filter((curve) => curve.belongsTo.kind === 'driver' && curve.belongsTo.driverId === driver.id);
  const { measured } = driver;
  const use = (quantity: Curve['quantity'], chosen: string): Command => {
    const curveId = chosen === MODEL ? null : chosen;
    const next = {
      responseCurveId: quantity === 'response' ? curveId : (measured?.responseCurveId ?? null),
      impedanceCurveId: quantity === 'impedance' ? curveId : (measured?.impedanceCurveId ?? null),
      blendHz: measured?.blendHz ?? defaultBlendHz,
    };
    const none = next.responseCurveId === null && next.impedanceCurveId === null;
    return { type: 'set-driver', driverId: driver.id, changes: { measured: none ? null : next } };
  };
  const choice = (quantity: Curve['quantity']) => {
    const candidates = own.filter((curve) => curve.quantity === quantity);
    const chosen = quantity === 'response' ? measured?.responseCurveId : measured?.impedanceCurveId;
    if (candidates.length === 0) return null;
    return (
      <ChoiceField
        name={`measured ${quantity}`}
        label={`Measured ${quantity} of ${driver.name}`}
        value={chosen ?? MODEL}
        choices={[
          { value: MODEL, words: 'none: the model all the way' },
          ...candidates.map((curve) => ({ value: curve.id, words: curve.name })),
        ]}
        command={(id) => use(quantity, id)}
      />
    );
  };
  const load = async (files: FileList | null) => {
    store.getState().select({ kind: 'driver', id: driver.id });
    for (const file of [...(files ?? [])]) store.getState().openText(await file.text(), file.name);
  };
  return (
    <div className="driver-editor-measured">
      {choice('response')}
      {choice('impedance')}
      {measured ? (
        <FieldRow name="measured above">
          <QuantityField
            label={`Blend frequency of ${driver.name}`}
            kind="frequency"
            value={measured.blendHz}
            note="model below, one octave of blending"
            command={(blendHz) => ({
              type: 'set-driver',
              driverId: driver.id,
              changes: { measured: { ...measured, blendHz } },
            })}
          />
        </FieldRow>
      ) : null}
      <label className="lane-button driver-editor-load" htmlFor={inputId}>
        load a measured response or impedance…
        <input
          id={inputId}
          className="unseen"
          type="file"
          onChange={(event) => {
            void load(event.target.files);
            event.target.value = '';
          }}
        />
      </label>
    </div>
  );
}
