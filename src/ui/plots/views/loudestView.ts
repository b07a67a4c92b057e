import { HEARING_EIGHT_HOURS_DB } from '../../../core/design/findings/loudness.ts';
import {
  coilHeatOf,
  type GreatestLevel,
  type LimitedCurve,
  levelBeforeLimits,
} from '../../../core/design/limits/index.ts';
import { levelsDbSpl } from '../../../core/speaker/complexCurve.ts';
import { levelRange, SUM_STYLE } from '../../../plot/index.ts';
import type { PictureCurve, PictureLine } from '../picture.ts';
import type { PlotView, ViewInput } from '../view.ts';
import { keptCurves } from './keptCurves.ts';
import { limitLook } from './limitLook.ts';
import { greatestOf, listenedTo, short } from './viewCurves.ts';

const HEARING: PictureLine = {
  id: 'guide:hearing',
  value: HEARING_EIGHT_HOURS_DB,
  label: 'above: harms ears in time (from memory)',
  kind: 'guide',
  colour: '--danger',
};

/** How loud it goes: the greatest undistorted level of a sine, drawn by which limit ends it where, over the level at the set drive. */
export const loudestView: PlotView = {
  id: 'loudest',
  question: 'loudness',
  button: 'greatest level',
  label:
    'Predicted greatest level of a sine before a limit is reached over frequency, with the limit that ends it. A prediction, not a test to play: it would harm ears and voice coils',
  empty: 'Nothing is heard yet: add a way, or open a project.',
  picture(input) {
    const { project, evaluation } = input;
    if (!evaluation || evaluation.simulation.speakers.length === 0) return null;
    const { frequenciesHz, sum } = evaluation.simulation;
    const ends = endedBy(input, levelBeforeLimits(project, evaluation), frequenciesHz);
    const present: PictureCurve = {
      id: 'sum',
      name: `now, ${short(project.chain.driveV)} V`,
      shortName: 'now',
      frequenciesHz,
      values: levelsDbSpl(sum),
      style: { ...SUM_STYLE, widthPx: 1.25 },
      axis: 'left',
      speakerId: null,
      read: true,
    };
    const kept = keptCurves(
      input,
      (then, design) => {
        const { levelsDb, bindingBy } = levelBeforeLimits(design, then);
        return [{ values: levelsDb.map((level, i) => (bindingBy[i] === null ? Number.NaN : level)) }];
      },
      'level',
    );
    return {
      left: {
        title: `predicted greatest level of a sine for a minute (not a test to play) ${listenedTo(input)}, dB re 20 µPa`,
        unit: ' dB',
        decimals: 1,
        range: levelRange(greatestOf([...ends, present])),
        steps: [5, 10, 25],
      },
      right: null,
      curves: [...kept, present, ...ends],
      lines: [HEARING],
    };
  },
};

/** One curve for each limit, where it is the first to be reached; where it takes over from another they meet. */
function endedBy(
  { project }: ViewInput,
  { levelsDb, bindingBy }: GreatestLevel,
  frequenciesHz: Float64Array,
): PictureCurve[] {
  const limits = [...new Set(bindingBy)].filter((limit): limit is LimitedCurve => limit !== null);
  return limits.map((limit) => {
    const { name, style, speakerId } = limitLook(project, limit);
    const usual = limit.kind === 'coil-heat' && !heatIsStated(project, limit.id) ? ' (usual values)' : '';
    return {
      id: `end:${limit.kind}:${limit.id}`,
      name: `${name}${usual}`,
      shortName: `by ${name}`,
      frequenciesHz,
      values: levelsDb.map((level, i) => (bindingBy[i] === limit || bindingBy[i - 1] === limit ? level : Number.NaN)),
      style,
      axis: 'left',
      speakerId,
      read: true,
    };
  });
}

function heatIsStated({ network, drivers }: ViewInput['project'], partId: string): boolean {
  const part = network.parts.find(({ id }) => id === partId);
  const driver = part?.kind === 'speaker' ? drivers.find(({ id }) => id === part.driverId) : undefined;
  return driver !== undefined && coilHeatOf(driver).isStated;
}
