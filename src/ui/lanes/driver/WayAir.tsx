import { useWorkbench } from '../../useWorkbench.ts';
import type { Way } from '../../waysInOrder.ts';
import { chamberWords } from '../enclosure/chamberWords.ts';
import { figureText } from '../figureText.ts';
import { useAlike } from '../useAlike.ts';

/** The air behind a way's driver in a few words. */
export function WayAir({ way }: { readonly way: Way }) {
  const chamberId = useWorkbench(
    (s) => s.project.enclosure.mounts.find((mount) => mount.partId === way.speakerId)?.chamberId ?? null,
  );
  const figure = useAlike((s) => s.evaluation?.keyFigures.chambers.find((chamber) => chamber.id === chamberId));
  const system = useWorkbench((s) => s.settings.units);
  const open = useWorkbench((s) =>
    s.project.enclosure.mounts.some(({ partId, back }) => partId === way.speakerId && back === 'open'),
  );
  if (open) return <p className="driver-card-air">on a bare baffle, open at its back</p>;
  if (chamberId === null) {
    // A dome is closed by its own back; a cone without a chamber is worth a word.
    return way.driver?.shape === 'dome' ? null : (
      <p className="driver-card-air driver-card-airless">No chamber behind it: pick one under the enclosure.</p>
    );
  }
  if (!figure) return null;
  return (
    <p className="driver-card-air">
      {figureText(figure.netM3, 'volume', system)} net, {chamberWords(figure, system)}
    </p>
  );
}
