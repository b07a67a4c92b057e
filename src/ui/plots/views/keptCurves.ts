import type { Evaluation } from '../../../core/design/evaluation.ts';
import type { Design } from '../../../core/document/design.ts';
import { ghostStyle } from '../../../plot/index.ts';
import type { PictureCurve } from '../picture.ts';
import type { ViewInput } from '../view.ts';
import { coincide, type Scale } from './coincide.ts';
import { ghostName, greatestOf } from './viewCurves.ts';

/** One curve of a kept state: the speaker or port it belongs to where a state has several, and its values. */
export interface KeptValues {
  readonly part?: string;
  readonly values: ArrayLike<number>;
}

/**
 * The ghosts of a view: for each kept state that can be computed the curves that `of` makes of its evaluation and design. Those of
 * single parts are not read out at the cursor, which would crowd the head line. While all of them lie under the present
 * curves a ghost bears no name, since nobody could see what it names.
 */
export function keptCurves(
  input: ViewInput,
  of: (evaluation: Evaluation, design: Design) => readonly KeptValues[],
  scale: Scale = 'ratio',
): PictureCurve[] {
  const { ghosts, evaluation, project } = input;
  if (ghosts.length === 0) return [];
  const present = evaluation ? of(evaluation, project) : [];
  return ghosts.flatMap((ghost, index) => {
    if (!ghost.evaluation) return [];
    const { simulation } = ghost.evaluation;
    const name = ghostName(input, ghost);
    const kept = project.snapshots.find((snapshot) => snapshot.id === ghost.id);
    const parts = of(ghost.evaluation, kept ?? project);
    const sizes = parts.map(({ values }) => greatestOf([{ frequenciesHz: simulation.frequenciesHz, values }]) ?? 0);
    const foremost = sizes.indexOf(Math.max(...sizes));
    const { frequenciesHz } = simulation;
    const hidden =
      parts.length === present.length &&
      parts.every(({ part, values }) => {
        const now = present.find((one) => one.part === part);
        return now !== undefined && coincide(frequenciesHz, values, now.values, scale);
      });
    return parts.map(
      ({ part, values }, place): PictureCurve => ({
        id: part ? `kept:${ghost.id}:${part}` : `kept:${ghost.id}`,
        name,
        shortName: ghosts.length > 1 ? `kept ${index + 1}` : 'kept',
        frequenciesHz,
        values,
        style: ghostStyle(index),
        axis: 'left',
        speakerId: null,
        ...(scale === 'angle' ? { period: 360 } : {}),
        named: place === foremost && !hidden,
        read: part === undefined,
      }),
    );
  });
}
