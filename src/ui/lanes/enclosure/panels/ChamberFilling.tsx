import type { Command } from '../../../../core/document/command.ts';
import type { Chamber } from '../../../../core/document/schema.ts';
import { fillingFigures } from '../../../../core/speaker/fillingFigures.ts';
import { ChoiceField } from '../../../fields/ChoiceField.tsx';
import { FieldRow } from '../../../fields/FieldRow.tsx';
import { QuantityField } from '../../../fields/QuantityField.tsx';
import { useWorkbench } from '../../../useWorkbench.ts';
import { useWorkbenchStore } from '../../../useWorkbenchStore.ts';
import { figureText } from '../../figureText.ts';
import { FillingAdvice, FillingFields, usualFilling } from './FillingFields.tsx';

const WAYS = [
  { value: 'stated', words: 'as stated' },
  { value: 'computed', words: 'computed' },
];

/** What a chamber is filled with: its gain as stated, or worked out from what is put in, and then what that does. */
export function ChamberFilling({ chamber }: { readonly chamber: Chamber }) {
  const store = useWorkbenchStore();
  const system = useWorkbench((s) => s.settings.units);
  const figures = useWorkbench((s) =>
    chamber.filling === null ? null : fillingFigures(s.project, chamber)?.volumeGain,
  );
  const { filling } = chamber;
  const set = (changes: Partial<Omit<Chamber, 'id'>>): Command => ({ type: 'set-chamber', id: chamber.id, changes });
  const effect = figures === null ? null : fillingFigures(store.getState().project, chamber);
  return (
    <>
      <ChoiceField
        name="effect of filling"
        label={`How the filling of ${chamber.name} counts`}
        value={filling === null ? 'stated' : 'computed'}
        choices={WAYS}
        command={(way) =>
          way === 'computed'
            ? set({ filling: filling ?? usualFilling('polyester-wadding'), fillGain: 1 })
            : set({
                filling: null,
                fillGain: effect === null ? chamber.fillGain : Number(effect.volumeGain.toFixed(2)),
              })
        }
      />
      {filling === null ? (
        <FieldRow
          name="filling makes it act larger by"
          about="A factor on the net volume: fibre keeps the air at an even temperature, so that it gives way more easily"
        >
          <QuantityField
            label={`Gain of the filling in ${chamber.name}`}
            kind="plain"
            value={chamber.fillGain}
            least={0.5}
            note="1 empty; 1.4 in theory, seldom above 1.35 (both from memory)"
            command={(fillGain) => set({ fillGain })}
          />
        </FieldRow>
      ) : (
        <>
          <FillingFields of={chamber.name} filling={filling} set={(next) => set({ filling: next, fillGain: 1 })} />
          <p className="enclosure-small">
            {effect ? (
              <>
                <b>Acts {effect.volumeGain.toFixed(2)} times as large</b> at{' '}
                {figureText(effect.atHz, 'frequency', system)}, Q of its air{' '}
                {figureText(effect.airQ, 'plain', system, 2)}; weigh out {figureText(effect.massKg, 'mass', system, 2)}.{' '}
              </>
            ) : null}
            <FillingAdvice material={filling.material} />
          </p>
        </>
      )}
    </>
  );
}
