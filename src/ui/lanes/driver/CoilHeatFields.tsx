import { coilHeatOf } from '../../../core/design/limits/coilHeatOf.ts';
import type { Command } from '../../../core/document/command.ts';
import type { Driver } from '../../../core/document/schema.ts';
import type { QuantityKind } from '../../../core/units/quantityKind.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { FieldRow } from '../../fields/FieldRow.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { useWorkbench } from '../../useWorkbench.ts';
import { figureText } from '../figureText.ts';
import { RefusingButton } from '../RefusingButton.tsx';

type Heat = NonNullable<Driver['heat']>;

const METALS = ['copper', 'aluminium'].map((value) => ({ value, words: value }));

const FIELDS: readonly {
  readonly key: Exclude<keyof Heat, 'wire'>;
  readonly words: string;
  readonly about: string;
  readonly kind: QuantityKind;
}[] = [
  {
    key: 'coilKPerW',
    words: 'coil above magnet',
    about: 'Thermal resistance: how much hotter than the magnet the coil gets for each watt',
    kind: 'thermal-resistance',
  },
  {
    key: 'coilS',
    words: 'coil’s time constant',
    about: 'How long the coil takes for the first 63 % of its rise above the magnet',
    kind: 'time',
  },
  {
    key: 'magnetKPerW',
    words: 'magnet above air',
    about: 'Thermal resistance: how much hotter than the air the magnet gets for each watt',
    kind: 'thermal-resistance',
  },
  {
    key: 'magnetS',
    words: 'magnet’s time constant',
    about: 'How long the magnet takes for the first 63 % of its rise above the air',
    kind: 'time',
  },
  {
    key: 'limitC',
    words: 'hottest the coil may get',
    about: 'What coil, glue and former bear in the long run',
    kind: 'temperature',
  },
];

/** How a driver's coil takes heat: as is usual for its size until the person states it; stating one value takes over the others. */
export function CoilHeatFields({
  driver,
  set,
}: {
  readonly driver: Driver;
  readonly set: (changes: { readonly heat: Driver['heat'] }) => Command;
}) {
  const system = useWorkbench((s) => s.settings.units);
  const shown = driver.heat ?? usualHeat(driver);
  const stated = driver.heat !== null;
  const state = (changes: Partial<Heat>): Command => set({ heat: { ...shown, ...changes } });
  return (
    <>
      <p className="driver-editor-heading">
        <b>heat of the coil</b>{' '}
        <span className="lane-soft">
          {stated ? 'as stated' : 'usual for its size (from memory, to a factor 2): state one value to state them all'}
        </span>
        {stated ? <RefusingButton command={() => set({ heat: null })}>usual for its size</RefusingButton> : null}
      </p>
      <ChoiceField
        name="wire"
        label={`Wire of the coil of ${driver.name}`}
        value={shown.wire}
        choices={METALS}
        command={(wire) => state({ wire: wire as Heat['wire'] })}
      />
      {FIELDS.map(({ key, words, about, kind }) => (
        <FieldRow key={key} name={words} about={about}>
          <QuantityField
            label={`${words}, of ${driver.name}`}
            kind={kind}
            {...(kind === 'time' ? { metricUnit: 's' } : {})}
            value={stated ? shown[key] : null}
            absent={`${figureText(shown[key], kind, system)} usual`}
            command={(value) => state({ [key]: value })}
          />
        </FieldRow>
      ))}
    </>
  );
}

function usualHeat(driver: Driver): Heat {
  const { metal, path, limitC } = coilHeatOf(driver);
  const [coil, magnet] = path;
  if (!coil || !magnet) throw new Error('A usual coil has a way for its heat in two terms.');
  return {
    wire: metal,
    coilKPerW: coil.resistanceKPerW,
    coilS: coil.timeConstantS,
    magnetKPerW: magnet.resistanceKPerW,
    magnetS: magnet.timeConstantS,
    limitC,
  };
}
