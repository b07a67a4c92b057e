import { type VentedStart as Start, ventedStart } from '../../../core/design/ventedStart.ts';
import { defaultLossQ } from '../../../core/document/defaults.ts';
import { portName } from '../../../core/document/describe/portName.ts';
import type { Chamber } from '../../../core/document/schema.ts';
import { fieldMessage } from '../../fields/fieldMessageText.ts';
import { useWorkbench } from '../../useWorkbench.ts';
import { figureText } from '../figureText.ts';
import { RefusingButton } from '../RefusingButton.tsx';

const FAMILIES: Readonly<Record<Start['alignment']['kind'], string>> = {
  QB3: 'QB3, quasi-Butterworth of third order',
  B4: 'B4, Butterworth of fourth order',
  C4: 'C4, Chebyshev of fourth order',
};

/** For a chamber with one kind of driver: the flat vented box to start from, and the button that makes the chamber so. */
export function VentedStart({ chamber }: { readonly chamber: Chamber }) {
  const project = useWorkbench((s) => s.project);
  const system = useWorkbench((s) => s.settings.units);
  const found = ventedStart(project, chamber);
  if (found === null) return null;
  if (!found.ok) {
    return <p className="enclosure-panel-result lane-soft">Flat vented box: {fieldMessage(found.problems)}</p>;
  }
  const { alignment, netM3, sized, port, ql, qlFrom, diameterFrom, command } = found.value;
  const rippleDb = 20 * Math.log10(alignment.rippleRatio);
  const length = (m: number) => figureText(m, 'length', system);
  return (
    <section className="enclosure-panel-result enclosure-offer" aria-label={`Flat vented box for ${chamber.name}`}>
      <p>
        <b>Flat vented box:</b> {figureText(netM3, 'volume', system)} net, tuned to{' '}
        {figureText(alignment.tuningHz, 'frequency', system)}, −3 dB at{' '}
        {figureText(alignment.f3Hz, 'frequency', system)} ({FAMILIES[alignment.kind]}
        {rippleDb > 0.005 ? `, ${rippleDb.toFixed(2)} dB of ripple` : ''}).
      </p>
      <p>
        It takes {movedWords(found.value, length)} and {portWords(found.value, length)}, {length(port.lengthM)} long
        {diameterFrom === 'stroke' ? ', wide enough for the driver’s full stroke' : ''}
        {diameterFrom === 'start' ? '; the driver states no stroke, so check the air speed' : ''}.
      </p>
      <RefusingButton command={() => command} label={`Make ${chamber.name} the flat vented box`}>
        use this box
      </RefusingButton>
      <p className="lane-soft">
        Assumes leakage alone, QL {ql}{' '}
        {qlFrom === 'chamber' ? 'as set for this chamber' : `(${defaultLossQ.leak} is the default where none is set)`},
        no coil inductance and no resistance before the driver
        {sized.by === 'stated' ? '' : '; the chamber’s depth stays'}. Source: A. N. Thiele, “Loudspeakers in Vented
        Boxes”, 1961/1971; R. H. Small, “Vented-Box Loudspeaker Systems”, 1973.
      </p>
    </section>
  );
}

function movedWords({ sized }: Start, length: (m: number) => string): string {
  const { volume, by } = sized;
  if (volume.kind === 'stated') return 'another stated volume';
  return by === 'top' ? `the top of the chamber at ${length(volume.topM)}` : `its bottom at ${length(volume.bottomM)}`;
}

function portWords({ port, diameterFrom }: Start, length: (m: number) => string): string {
  if (diameterFrom === null) return portName(port.id);
  return `a round port on the back${port.shape.kind === 'round' ? `, ${length(port.shape.diameterM)} across` : ''}`;
}
