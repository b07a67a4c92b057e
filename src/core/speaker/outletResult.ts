import { complexCurve } from './complexCurve.ts';
import type { ModelSpeaker, SpeakerModel } from './model.ts';
import { radiateInto } from './radiate.ts';
import type { PortResult } from './simulation.ts';
import type { Solved } from './solved.ts';

export interface Outlet {
  readonly id: string;
  /** The branch that carries its flow, outwards. */
  readonly branch: string;
  /** The chamber into which it leads; absent or null: it radiates. */
  readonly toChamberId?: string | null;
  readonly radiation: ModelSpeaker['radiation'];
}

/** Flow out of a port, passive radiator or line: what its branch carries, and the pressure that it makes outside. */
export function outletResult(
  model: SpeakerModel,
  outlet: Outlet,
  areaM2: number,
  { compiled, table, solution }: Solved,
  omegas: Float64Array,
): PortResult {
  const row = table.rows[compiled.indexOf.get(outlet.branch)!]!;
  const [from, to] = row.branch.nodes;
  const inside = solution.potential(from);
  const outside = solution.potential(to);
  const volumeVelocity = complexCurve(omegas.length);
  const airSpeedRmsMPerS = new Float64Array(omegas.length);
  for (let i = 0; i < omegas.length; i++) {
    const a = inside.re[i]! - outside.re[i]!;
    const b = inside.im[i]! - outside.im[i]!;
    const re = a * row.re[i]! - b * row.im[i]!;
    const im = a * row.im[i]! + b * row.re[i]!;
    volumeVelocity.re[i] = re;
    volumeVelocity.im[i] = im;
    airSpeedRmsMPerS[i] = Math.sqrt(re * re + im * im) / areaM2;
  }
  const pressure = complexCurve(omegas.length);
  if (!outlet.toChamberId) radiateInto(pressure, volumeVelocity, outlet.radiation, model, omegas);
  return { id: outlet.id, volumeVelocity, airSpeedRmsMPerS, pressure };
}
