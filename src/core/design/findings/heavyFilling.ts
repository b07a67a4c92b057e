import type { Check } from './context.ts';

/** Flow resistivity times depth up to which the formula of a stuffed chamber stays within some 10 %, Pa·s/m: see `filledChamberAdmittance`. */
export const MOST_DRAG_PA_S_PER_M = 1250;

/** Stuffing so heavy that the chamber no longer acts as one volume: its gain and tuning are then no more than a hint. */
export const heavyFilling: Check = ({ model }) =>
  model.chambers.flatMap(({ id, filling }) => {
    if (filling?.placing.kind !== 'stuffed') return [];
    const { share, depthM } = filling.placing;
    const dragPaSPerM = filling.fill.resistivityPaSPerM2 * share * depthM;
    if (dragPaSPerM <= MOST_DRAG_PA_S_PER_M) return [];
    return [
      {
        severity: 'warning' as const,
        code: 'finding.heavy-filling',
        place: { kind: 'chamber' as const, id },
        values: { dragPaSPerM, mostPaSPerM: MOST_DRAG_PA_S_PER_M },
      },
    ];
  });
