export type CoreMaterialName = 'silicon-steel' | 'iron-powder' | 'ferrite';

/** Ranges that materials of one name span, and a value between to begin with. */
export interface CoreMaterial {
  readonly frequencyPower: readonly [least: number, most: number];
  readonly fluxPower: readonly [least: number, most: number];
  readonly saturationT: readonly [least: number, most: number];
}

/** Cores of crossover coils, every figure from memory: laminated silicon steel, iron powder, ferrite. */
export const CORE_MATERIALS: Readonly<Record<CoreMaterialName, CoreMaterial>> = {
  'silicon-steel': { frequencyPower: [1.3, 1.6], fluxPower: [1.6, 2.0], saturationT: [1.5, 1.8] },
  'iron-powder': { frequencyPower: [1.1, 1.3], fluxPower: [2.0, 2.2], saturationT: [1.0, 1.4] },
  ferrite: { frequencyPower: [1.2, 1.6], fluxPower: [2.3, 2.8], saturationT: [0.3, 0.45] },
};

/** Loss tangent of a gapped core at 1 kHz where nothing is known: 0.005 to 0.03 (from memory). */
export const USUAL_CORE_LOSS_TANGENT = 0.015;

/** Inductance left with the core saturated, over that at small currents (from memory). */
export const AIR_SHARE: Readonly<Record<'bar' | 'closed', readonly [least: number, most: number]>> = {
  bar: [0.2, 0.4],
  closed: [0.02, 0.1],
};
