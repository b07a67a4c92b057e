import type { KeyFigures } from '../../../core/design/evaluation.ts';
import type { UnitSystem } from '../../../core/units/quantityKind.ts';
import { figureText } from '../figureText.ts';

/** What a chamber does, in a few words: "tuned to 43.1 Hz", "sealed, Qtc 0.71 at 62 Hz"; empty where nothing is known. */
export function chamberWords(figure: KeyFigures['chambers'][number] | undefined, system: UnitSystem): string {
  if (!figure) return '';
  if (figure.tuningHz !== null) return `tuned to ${figureText(figure.tuningHz, 'frequency', system)}`;
  // Coupled chambers, inner ports, lines and cones between two chambers leave no one figure to state.
  if (figure.sealed === null) return 'no tuning of its own';
  return `Qtc ${figureText(figure.sealed.qtc, 'plain', system, 2)} at ${figureText(figure.sealed.fcHz, 'frequency', system)}`;
}

/** The same in the fewest words, for inside the drawing: "tuned to 43.1 Hz", "Qtc 0.71". */
export function tuningWords(figure: KeyFigures['chambers'][number] | undefined, system: UnitSystem): string {
  if (figure?.sealed) return `Qtc ${figureText(figure.sealed.qtc, 'plain', system, 2)}`;
  return chamberWords(figure, system);
}
