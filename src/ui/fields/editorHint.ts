import { quantityText } from '../../core/units/formatQuantity.ts';
import type { QuantityKind, UnitSystem } from '../../core/units/quantityKind.ts';
import type { Settings } from '../../state/workbench.ts';
import { showInField } from './showInField.ts';
import type { Stepping } from './stepping.ts';
import { linearStep } from './stepQuantity.ts';

/** What an opened field says below itself: what it was, how it steps, and what else matters. */
export function editorHint(field: {
  readonly was: string | null;
  readonly stepping: Stepping;
  readonly series: Settings['series'];
  readonly system: UnitSystem;
  readonly kind: QuantityKind;
  readonly note?: string | undefined;
}): string {
  const said = [field.was === null ? 'was not stated' : `was ${field.was}`];
  if (field.stepping.by === 'series') said.push(`↑↓ along ${field.series}`);
  else if (field.stepping.by === 'digit') said.push('↑↓ steps');
  else {
    const step = linearStep(field.stepping, field.system);
    said.push(`↑↓ by ${quantityText(showInField(step, field.kind, field.system))}`);
  }
  if (field.note) said.push(field.note);
  return said.join(' · ');
}
