import { useWorkbench } from '../../useWorkbench.ts';
import type { Way } from '../../waysInOrder.ts';
import { figureText } from '../figureText.ts';
import { useAlike } from '../useAlike.ts';
import { wayColour } from '../wayColour.ts';
import { ConeDrawing } from './ConeDrawing.tsx';
import { LimitBar } from './LimitBar.tsx';
import { type LimitBarPlan, limitBars } from './limitBars.ts';
import { measuredWords } from './measuredWords.ts';
import { readDriver } from './readDriver.ts';
import { WayAir } from './WayAir.tsx';
import './driver-card.css';

const NO_LIMITS: readonly LimitBarPlan[] = [];

/** The driver of one way: drawn to scale, named, with its key numbers, its air and its live limits. */
export function DriverCard({
  way,
  spanM,
  editing,
  edit,
}: {
  readonly way: Way;
  readonly spanM: number;
  /** Whether its data sheet lies open below. */
  readonly editing: boolean;
  readonly edit: (open: boolean) => void;
}) {
  const system = useWorkbench((s) => s.settings.units);
  const { driver, speakerId } = way;
  const limits = useAlike((s) =>
    s.evaluation ? limitBars(speakerId, s.evaluation.keyFigures, s.project, s.settings.units) : NO_LIMITS,
  );
  if (!driver) {
    return (
      <article className="driver-card" style={wayColour(way.index)} aria-label={way.name}>
        <p>{speakerId} has no driver: choose one in its menu in the crossover.</p>
      </article>
    );
  }
  const read = readDriver(driver);
  const numbers = [
    driver.entered.fsHz ?? (read.ok ? read.value.derived.fsHz : null),
    driver.entered.qts ?? (read.ok ? read.value.derived.qts : null),
  ];
  const impedance = driver.entered.nominalOhm ?? driver.entered.reOhm ?? null;
  const keyNumbers = [
    numbers[0] == null ? '' : `fs ${figureText(numbers[0], 'frequency', system)}`,
    numbers[1] == null ? '' : `Qts ${figureText(numbers[1], 'plain', system, 2)}`,
    impedance === null ? '' : `${driver.entered.nominalOhm ? '' : 'Re '}${figureText(impedance, 'resistance', system)}`,
    read.ok ? `${read.value.derived.sensitivityDb2V83.toFixed(0)} dB` : '',
  ].filter((text) => text !== '');
  return (
    <article className="driver-card" style={wayColour(way.index)} aria-label={`${way.name}: ${driver.name}`}>
      <ConeDrawing driver={driver} spanM={spanM} />
      <div className="driver-card-text">
        <h3 className="driver-card-name">{driver.name}</h3>
        <p className="driver-card-about">{driver.description}</p>
        <p>{keyNumbers.join(' · ')}</p>
        <WayAir way={way} />
        {driver.measured ? <p>{measuredWords(driver.measured, system)}</p> : null}
      </div>
      <button
        type="button"
        className="lane-button driver-card-edit"
        aria-expanded={editing}
        aria-label={`${editing ? 'Close' : 'Edit'} the data sheet of ${driver.name}`}
        onClick={() => edit(!editing)}
      >
        {editing ? 'done' : 'edit'}
      </button>
      <div className="driver-card-limits">
        {limits.map((plan) => (
          <LimitBar key={plan.name} plan={plan} />
        ))}
      </div>
    </article>
  );
}
