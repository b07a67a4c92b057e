import { airSpeedVerdict, type PortFlow, portFlow, viscousAir } from '../acoustics/index.ts';
import type { Port } from '../document/schema.ts';
import type { SpeakerModel } from '../speaker/model.ts';
import { MODEL_TEMPERATURE_C } from '../speaker/portBranches.ts';
import type { PortResult } from '../speaker/simulation.ts';
import { bandIndices, greatestInBand } from './band.ts';
import type { KeyFigures } from './evaluation.ts';
import {
  FLARED_SPEED_CAREFUL_M_PER_S,
  FLARED_SPEED_LOUD_M_PER_S,
  PORT_SPEED_CAREFUL_M_PER_S,
  PORT_SPEED_LOUD_M_PER_S,
} from './findings/portSpeed.ts';

type PortAir = KeyFigures['portSpeeds'][number];

const FROM_HZ = 20;
const TO_HZ = 20000;
/** Above this the air in a port hardly moves: its stroke need not be looked at. */
const STROKE_TO_HZ = 500;

/** Greatest peak speed of the air in a port or in a line's mouth with straight edges, m/s, and its guide values. */
export function mouthAir(frequenciesHz: Float64Array, { id, airSpeedRmsMPerS }: PortResult): Omit<PortAir, 'stroke'> {
  const greatest = greatestInBand(airSpeedRmsMPerS, frequenciesHz, FROM_HZ, TO_HZ);
  return {
    id,
    peakMPerS: Math.SQRT2 * (greatest?.value ?? 0),
    atHz: greatest?.atHz ?? FROM_HZ,
    carefulMPerS: PORT_SPEED_CAREFUL_M_PER_S,
    loudMPerS: PORT_SPEED_LOUD_M_PER_S,
  };
}

/**
 * The air in a port at its worst frequencies: peak speed with the guide values for its ends and, where both ends are rounded
 * generously, its stroke over their radius with what `airSpeedVerdict` says of it. A port that the document lacks counts as straight.
 */
export function portAir(
  port: Port | undefined,
  result: PortResult,
  frequenciesHz: Float64Array,
  model: Pick<SpeakerModel, 'air' | 'airTemperatureC'>,
): PortAir {
  const straight = mouthAir(frequenciesHz, result);
  const edgeRadiusM = port === undefined ? 0 : Math.min(port.innerFlareM, port.outerFlareM);
  if (port === undefined || edgeRadiusM === 0) return { ...straight, stroke: null };
  const radiusM = boreRadiusM(port.shape);
  const air = viscousAir(model.air, model.airTemperatureC ?? MODEL_TEMPERATURE_C);
  const flowAt = (i: number): PortFlow =>
    portFlow(Math.SQRT2 * result.airSpeedRmsMPerS[i]!, frequenciesHz[i]!, radiusM, air);
  const { from, to } = bandIndices(frequenciesHz, FROM_HZ, STROKE_TO_HZ);
  let worst: { readonly flow: PortFlow; readonly at: number } | null = null;
  for (let at = from; at < to; at++) {
    const flow = flowAt(at);
    if (worst === null || isWorse(flow, worst.flow, edgeRadiusM)) worst = { flow, at };
  }
  if (worst === null) return { ...straight, stroke: null };
  const { flow, at } = worst;
  const verdict = airSpeedVerdict(
    { ...flow, speedPeakMPerS: Math.SQRT2 * result.airSpeedRmsMPerS[at]! },
    { radiusM, edgeRadiusM },
  );
  const { reasons } = verdict;
  const stroke = reasons.find(({ measure }) => measure === 'stroke');
  // The verdict measures Mach only where it takes the ends for straight: rounded too little to count.
  if (stroke === undefined || reasons.some(({ measure }) => measure === 'mach')) return { ...straight, stroke: null };
  return {
    ...straight,
    carefulMPerS: FLARED_SPEED_CAREFUL_M_PER_S,
    loudMPerS: FLARED_SPEED_LOUD_M_PER_S,
    stroke: { overEdge: stroke.value, atHz: frequenciesHz[at]!, edgeRadiusM, concern: stroke.concern },
  };
}

/** Strokes beyond the edge's radius are judged by their boundary layer, all others by themselves. */
function isWorse(a: PortFlow, b: PortFlow, edgeRadiusM: number): boolean {
  const [past, pastBefore] = [a.strokePeakM > edgeRadiusM, b.strokePeakM > edgeRadiusM];
  if (past !== pastBefore) return past;
  return past ? a.layerReynolds > b.layerReynolds : a.strokePeakM > b.strokePeakM;
}

/** Radius of the bore, for a slot that of the circle of equal area. */
const boreRadiusM = (shape: Port['shape']): number =>
  shape.kind === 'round' ? shape.diameterM / 2 : Math.sqrt((shape.widthM * shape.heightM) / Math.PI);
