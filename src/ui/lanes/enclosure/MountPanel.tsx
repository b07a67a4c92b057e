import type { Command } from '../../../core/document/command.ts';
import type { Mount } from '../../../core/document/schema.ts';
import { FieldRow } from '../../fields/FieldRow.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { useWorkbench } from '../../useWorkbench.ts';
import type { Way } from '../../waysInOrder.ts';
import { driverSize } from './driverSize.ts';
import { keepOnBaffle } from './keepOnBaffle.ts';
import { MountAir } from './panels/MountAir.tsx';
import { StartingPoints } from './panels/StartingPoints.tsx';
import { Suitabilities } from './panels/Suitabilities.tsx';

/** Where one driver sits: its place on the front, its acoustic centre, the air behind and in front of it, and other boxes to begin with. */
export function MountPanel({ way, mount }: { readonly way: Way; readonly mount: Mount }) {
  const enclosure = useWorkbench((s) => s.project.enclosure);
  const set = (changes: Partial<Omit<Mount, 'partId'>>): Command => ({
    type: 'set-mount',
    partId: mount.partId,
    changes,
  });
  const { radiusM } = driverSize(way.driver);
  const place = (next: { readonly xM: number; readonly yM: number }) =>
    set(keepOnBaffle(next, { halfWidthM: radiusM, halfHeightM: radiusM }, enclosure));
  return (
    <div className="enclosure-panel">
      <div className="enclosure-panel-columns">
        <div>
          <FieldRow name="across">
            <QuantityField
              label={`Place of ${way.name} across, right of the middle`}
              kind="length"
              metricUnit="mm"
              value={mount.xM}
              note="right of the middle"
              command={(xM) => place({ xM, yM: mount.yM })}
            />
          </FieldRow>
          <FieldRow name="up">
            <QuantityField
              label={`Height of ${way.name} on the front`}
              kind="length"
              metricUnit="mm"
              value={mount.yM}
              note="from the bottom"
              command={(yM) => place({ xM: mount.xM, yM })}
            />
          </FieldRow>
        </div>
        <div>
          <FieldRow name="acoustic centre">
            <QuantityField
              label={`Acoustic centre of ${way.name}`}
              kind="length"
              metricUnit="mm"
              value={mount.acousticCentreZM}
              note="behind the front is negative"
              command={(acousticCentreZM) => set({ acousticCentreZM })}
            />
          </FieldRow>
          <MountAir way={way} mount={mount} />
        </div>
      </div>
      {needsNoBox(way, mount) ? (
        <p className="enclosure-small lane-soft">This driver needs no box.</p>
      ) : (
        <>
          <StartingPoints way={way} />
          <Suitabilities speakerId={way.speakerId} name={way.name} />
        </>
      )}
    </div>
  );
}

/** A tweeter is closed at its own back; a cone without a chamber is still to be given one. */
const needsNoBox = ({ driver }: Way, { chamberId, back }: Mount): boolean =>
  chamberId === null && back === 'closed' && (driver?.role === 'tweeter' || driver?.shape === 'dome');
