import { deeperCabinetFor, type WishedBox } from '../../../../core/design/deeperCabinetFor.ts';
import { sealedBoxFor } from '../../../../core/design/sealedBoxFor.ts';
import { ventedBoxFor } from '../../../../core/design/ventedBoxFor.ts';
import type { Chamber } from '../../../../core/document/schema.ts';
import { grossVolumeM3 } from '../../../../core/speaker/chamberVolume.ts';
import { quantityText } from '../../../../core/units/formatQuantity.ts';
import { showInField } from '../../../fields/showInField.ts';
import { useWorkbench } from '../../../useWorkbench.ts';
import { RefusingButton } from '../../RefusingButton.tsx';

/** Two ways to a box for which the cabinet has no room: a deeper cabinet, or the volume as a number. */
export function RoomFor({
  chamber,
  wish,
  taken,
}: {
  readonly chamber: Chamber;
  readonly wish: WishedBox;
  readonly taken: () => void;
}) {
  const project = useWorkbench((s) => s.project);
  const system = useWorkbench((s) => s.settings.units);
  const deeper = deeperCabinetFor(project, chamber, wish);
  const { volumeM3, tuningHz } = wish;
  const stated: Chamber = {
    ...chamber,
    volume: { kind: 'stated', grossM3: grossVolumeM3(chamber, project.enclosure) },
  };
  const number =
    tuningHz === null ? sealedBoxFor(project, stated, volumeM3) : ventedBoxFor(project, stated, { volumeM3, tuningHz });
  return (
    <p className="enclosure-add">
      {deeper.ok ? (
        <RefusingButton command={() => deeper.value.command} after={taken}>
          make the cabinet {quantityText(showInField(deeper.value.depthM, 'length', system, 'mm'))} deep
        </RefusingButton>
      ) : null}
      {number.ok ? (
        <RefusingButton command={() => number.value.command} after={taken}>
          state the volume as a number
        </RefusingButton>
      ) : null}
    </p>
  );
}
