import { quantityText } from '../../../../../core/units/formatQuantity.ts';
import { showInField } from '../../../../fields/showInField.ts';
import { useWorkbench } from '../../../../useWorkbench.ts';
import { RefusingButton } from '../../../RefusingButton.tsx';
import { useWays } from '../../../useWays.ts';
import { hintsFor } from './hintsFor.ts';

/** Customs of the trade that bear on what is drawn, as small notes below it. */
export function CabinetHints() {
  const enclosure = useWorkbench((s) => s.project.enclosure);
  const listening = useWorkbench((s) => s.project.listening);
  const system = useWorkbench((s) => s.settings.units);
  const ways = useWays();
  const { apartM, closestM, upper, lower, standM, offM, floating } = hintsFor(enclosure, ways, listening);
  const length = (m: number) => quantityText(showInField(m, 'length', system, 'mm'));
  if (apartM === null && offM === null && floating.length === 0) return null;
  return (
    <ul className="cabinet-hints">
      {floating.length === 0 ? null : (
        <li>
          {`The front leans back, and the acoustic ${floating.length === 1 ? 'centre' : 'centres'} of ${floating.map(({ name }) => name).join(', ')} ${floating.length === 1 ? 'is' : 'are'} still where an upright front would have ${floating.length === 1 ? 'it' : 'them'}. `}
          <RefusingButton
            command={() => ({
              type: 'together',
              commands: floating.map(({ speakerId, zM }) => ({
                type: 'set-mount',
                partId: speakerId,
                changes: { acousticCentreZM: zM },
              })),
            })}
          >
            move back with the front
          </RefusingButton>
        </li>
      )}
      {apartM === null ? null : (
        <li>
          {`${upper} and ${lower} sit ${length(apartM)} apart, centre to centre; their frames would allow ${length(closestM)}. Close together they sound as one further off axis.`}{' '}
          <small>Common practice, no source.</small>
        </li>
      )}
      {offM === null ? null : (
        <li>
          {`The tweeter is ${length(Math.abs(offM))} ${offM > 0 ? 'below' : 'above'} the ears. `}
          {standM === null ? (
            levelling(offM, listening.standHeightM)
          ) : (
            <>
              {`A stand of ${length(standM)} brings it level. Make sure it cannot topple. `}
              <RefusingButton command={() => ({ type: 'set-listening', changes: { standHeightM: standM } })}>
                use that stand
              </RefusingButton>
            </>
          )}{' '}
          <small>Common practice, no source.</small>
        </li>
      )}
    </ul>
  );
}

/** What brings the tweeter level with the ears where no stand does; `offM`: how far it is below them. */
function levelling(offM: number, standHeightM: number): string {
  if (offM > 0) return 'Move the tweeter up, or lean the front back.';
  return standHeightM > 0 ? 'Move the tweeter down, or set the cabinet lower.' : 'Move the tweeter down.';
}
