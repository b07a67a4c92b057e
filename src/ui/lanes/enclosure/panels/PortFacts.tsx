import { portRoom } from '../../../../core/design/portRoom.ts';
import { splitOverTwo } from '../../../../core/design/splitOverTwo.ts';
import { tuningCutShorter } from '../../../../core/design/tuningCutShorter.ts';
import { firstPipeResonanceHz, ventFigures } from '../../../../core/design/ventFigures.ts';
import { portName } from '../../../../core/document/describe/portName.ts';
import type { Port } from '../../../../core/document/schema.ts';
import { useCalmWorkbench } from '../../../useCalmWorkbench.ts';
import { figureText } from '../../figureText.ts';
import { RefusingButton } from '../../RefusingButton.tsx';
import { portAirWords } from './portAirWords.ts';
import './panels.css';

/** What a saw takes too much, in each system of units. */
const CUT_M = { metric: 0.005, imperial: 0.0254 / 4 } as const;

/** What follows from a port as it is: room behind its end, air speed, a cut too short, pipe resonance, stuffing. */
export function PortFacts({ port }: { readonly port: Port }) {
  const { project, evaluation, system } = useCalmWorkbench((s) => ({
    project: s.project,
    evaluation: s.evaluation,
    system: s.settings.units,
  }));
  if (evaluation === null) return null;
  const { air } = evaluation.simulation;
  const length = (m: number) => figureText(m, 'length', system);
  const hertz = (hz: number) => figureText(hz, 'frequency', system);
  const speed = evaluation.keyFigures.portSpeeds.find(({ id }) => id === port.id);
  const cutM = CUT_M[system];
  const shorterHz = tuningCutShorter(project, port, cutM, air.soundSpeedMPerS);
  const room = portRoom(port, project.enclosure);
  const vent = ventFigures(port, air);
  const heard = speed ? portAirWords(speed) : null;
  return (
    <>
      <ul className="enclosure-panel-result enclosure-facts" aria-label={`What ${portName(port.id)} does`}>
        {room === null ? (
          <li>Whether it fits depends on where it bends or leads: measure along its middle line.</li>
        ) : (
          <li data-concern={room.behindM < room.leastM ? 'audible' : room.behindM < room.wishedM ? 'watch' : 'quiet'}>
            <b>
              {room.behindM < room.leastM ? 'Does not fit' : room.behindM < room.wishedM ? 'Fits tightly' : 'Fits'}:
            </b>{' '}
            {room.behindM > 0
              ? `${length(room.behindM)} free behind its inner end`
              : `it would run ${length(-room.behindM)} into the wall`}
            ; {length(room.leastM)} at least, {length(room.wishedM)} usual (common practice, no source).
          </li>
        )}
        {speed && heard ? (
          <li data-concern={heard.concern}>
            Air at this drive up to <b>{figureText(speed.peakMPerS, 'speed', system, 2)} peak</b> at {hertz(speed.atHz)}
            : {heard.words}; guide values {figureText(speed.carefulMPerS, 'speed', system, 2)} and{' '}
            {figureText(speed.loudMPerS, 'speed', system, 2)} (from memory).
            {speed.stroke ? ` Its stroke is ${speed.stroke.overEdge.toFixed(1)} times the rounding.` : ''}
          </li>
        ) : null}
        {shorterHz === null ? null : (
          <li>
            Cut {length(cutM)} too short it tunes to <b>{hertz(shorterHz)}</b>.
          </li>
        )}
        <li>
          First resonance of its air near {hertz(firstPipeResonanceHz(port, air.soundSpeedMPerS))}
          {port.resonances && port.toChamberId === null ? ', in the response above.' : ', left out of the response.'}
        </li>
        {vent === null ? null : (
          <li>
            Stuffed, it is a resistance below {hertz(vent.resistiveBelowHz)}: an aperiodic vent, which damps the
            chamber’s resonance in place of a tuning.
          </li>
        )}
      </ul>
      {splitOverTwo(project, port, air.soundSpeedMPerS) === null ? null : (
        <RefusingButton command={() => splitOverTwo(project, port, air.soundSpeedMPerS)}>
          make {2 * port.count} ports of the same area in all
        </RefusingButton>
      )}
    </>
  );
}
