import type { Command } from '../../../core/document/command.ts';
import type { Chamber } from '../../../core/document/schema.ts';
import { grossVolumeM3 } from '../../../core/speaker/chamberVolume.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { FieldRow } from '../../fields/FieldRow.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { useWorkbench } from '../../useWorkbench.ts';
import { useWorkbenchStore } from '../../useWorkbenchStore.ts';
import { figureText } from '../figureText.ts';
import { RefusingButton } from '../RefusingButton.tsx';
import { chamberWords } from './chamberWords.ts';
import { LossFields } from './LossFields.tsx';
import { Alignments } from './panels/Alignments.tsx';
import { ChamberFilling } from './panels/ChamberFilling.tsx';
import { SealedWish } from './SealedWish.tsx';
import { sideChambers } from './sideChambers.ts';
import { VentedStart } from './VentedStart.tsx';

const VOLUME_KINDS = [
  { value: 'geometry', words: 'from its bounds' },
  { value: 'stated', words: 'as stated' },
];

/** All about one chamber: its volume and what takes some of it, filling, losses, and what comes out. */
export function ChamberPanel({ chamber }: { readonly chamber: Chamber }) {
  const store = useWorkbenchStore();
  const figure = useWorkbench((s) => s.evaluation?.keyFigures.chambers.find((entry) => entry.id === chamber.id));
  const system = useWorkbench((s) => s.settings.units);
  const { volume } = chamber;
  const set = (changes: Partial<Omit<Chamber, 'id'>>): Command => ({ type: 'set-chamber', id: chamber.id, changes });
  const length = (name: string, label: string, value: number | null, next: (m: number) => Chamber['volume']) => (
    <FieldRow name={name}>
      <QuantityField
        label={`${label} of ${chamber.name}`}
        kind="length"
        metricUnit="mm"
        value={value}
        absent="full depth"
        least={0}
        command={(m) => set({ volume: next(m) })}
        clear={
          name === 'depth' && volume.kind === 'geometry'
            ? () => set({ volume: { ...volume, depthM: null } })
            : undefined
        }
      />
    </FieldRow>
  );
  return (
    <div className="enclosure-panel">
      <TextField label="Name of the chamber" value={chamber.name} command={(name) => set({ name })} longest={80} />
      <div className="enclosure-panel-columns">
        <div>
          <ChoiceField
            name="volume"
            label={`Volume of ${chamber.name}`}
            value={volume.kind}
            choices={VOLUME_KINDS}
            command={(kind) => set({ volume: volumeOfKind(kind, chamber, store.getState().project.enclosure) })}
          />
          {volume.kind === 'geometry' ? (
            <>
              {length('from height', 'Lower bound', volume.bottomM, (bottomM) => ({ ...volume, bottomM }))}
              {length('to height', 'Upper bound', volume.topM, (topM) => ({ ...volume, topM }))}
              {length('depth', 'Depth', volume.depthM, (depthM) => ({ ...volume, depthM }))}
            </>
          ) : (
            <FieldRow name="gross volume">
              <QuantityField
                label={`Gross volume of ${chamber.name}`}
                kind="volume"
                value={volume.grossM3}
                least={1e-5}
                command={(grossM3) => set({ volume: { kind: 'stated', grossM3 } })}
              />
            </FieldRow>
          )}
          <FieldRow name="braces take">
            <QuantityField
              label={`Volume of braces in ${chamber.name}`}
              kind="volume"
              value={chamber.bracesM3}
              least={0}
              command={(bracesM3) => set({ bracesM3 })}
            />
          </FieldRow>
        </div>
        <div>
          <ChamberFilling chamber={chamber} />
          <LossFields
            name="leak QL"
            about="Quality factor of the air that leaks out at joints and seals: the smaller, the more it loses"
            of={chamber.name}
            loss={chamber.leak}
            command={(leak) => set({ leak })}
          />
          <LossFields
            name="absorption QA"
            about="Quality factor of what filling and lining absorb: the smaller, the more they take"
            of={chamber.name}
            loss={chamber.absorption}
            command={(absorption) => set({ absorption })}
          />
        </div>
      </div>
      {figure ? (
        <p className="enclosure-panel-result">
          <b>{figureText(figure.netM3, 'volume', system)} net</b> of {figureText(figure.grossM3, 'volume', system)}{' '}
          gross
          {figure.apparentM3 === figure.netM3 ? '' : `, acts as ${figureText(figure.apparentM3, 'volume', system)}`};{' '}
          {chamberWords(figure, system)}
        </p>
      ) : null}
      <SealedWish chamber={chamber} />
      <VentedStart chamber={chamber} />
      <Alignments chamber={chamber} />
      <RefusingButton command={() => ({ type: 'remove-chamber', id: chamber.id })}>remove this chamber</RefusingButton>
    </div>
  );
}

function volumeOfKind(
  kind: string,
  chamber: Chamber,
  enclosure: Parameters<typeof grossVolumeM3>[1],
): Chamber['volume'] {
  if (kind === 'stated') return { kind: 'stated', grossM3: Math.max(1e-5, grossVolumeM3(chamber, enclosure)) };
  const outline = sideChambers(enclosure).find((candidate) => candidate.id === chamber.id);
  return {
    kind: 'geometry',
    bottomM: outline?.bottomM ?? enclosure.panelM,
    topM: outline?.topM ?? enclosure.heightM - enclosure.panelM,
    depthM: null,
  };
}
