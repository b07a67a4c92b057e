import { type Duct, type DuctSection, ductBranches, openEndAdmittance } from '../acoustics/duct/index.ts';
import { fibreFluid } from '../acoustics/fill/index.ts';
import { type ViscousAir, viscousAir } from '../acoustics/viscousAir.ts';
import { type Branch, RETURN } from '../circuit/index.ts';
import type { ModelLine, SpeakerModel } from './model.ts';
import { airNode, lineMouthBranch, lineNode } from './nodeNames.ts';
import { MODEL_TEMPERATURE_C } from './portBranches.ts';

/**
 * A line as branches: one or two lossy ducts after one another, then what it ends in. `lineMouthBranch(id)` carries the flow
 * out of an open end. Its walls are those of a square duct; a filling's friction and heat follow from its flow resistivity.
 */
export function lineBranches(line: ModelLine, model: Pick<SpeakerModel, 'air' | 'airTemperatureC'>): Branch[] {
  const air = viscousAir(model.air, model.airTemperatureC ?? MODEL_TEMPERATURE_C);
  const branches: Branch[] = [];
  let node = airNode(line.chamberId);
  const pieces = lineDucts(line, air);
  pieces.forEach((duct, k) => {
    const isLast = k === pieces.length - 1;
    const next = isLast && line.end.kind === 'chamber' ? airNode(line.end.chamberId) : lineNode(line.id, k);
    const { between, nearShunt, farShunt } = ductBranches(duct, air);
    const name = `${line.id} piece ${k + 1}`;
    branches.push(
      { kind: 'admittance', id: name, nodes: [node, next], admittance: between },
      { kind: 'admittance', id: `${name} near`, nodes: [node, RETURN], admittance: nearShunt },
      { kind: 'admittance', id: `${name} far`, nodes: [next, RETURN], admittance: farShunt },
    );
    node = next;
  });
  if (line.end.kind === 'open') {
    const admittance = openEndAdmittance({ end: 'flanged', areaM2: line.endAreaM2, count: 1 }, air);
    branches.push({ kind: 'admittance', id: lineMouthBranch(line.id), nodes: [node, RETURN], admittance });
  }
  return branches;
}

const square = (areaM2: number): DuctSection => ({ kind: 'any', areaM2, perimeterM: 4 * Math.sqrt(areaM2) });

/** The filled stretch, then the empty one; each tapers as the whole does. */
function lineDucts(line: ModelLine, air: ViscousAir): Duct[] {
  const { lengthM, startAreaM2, endAreaM2, filled } = line;
  const stretch = (from: number, to: number): Duct => {
    const areaAt = (share: number): number => startAreaM2 + (endAreaM2 - startAreaM2) * share;
    const length = { section: square(areaAt(from)), lengthM: lengthM * (to - from) };
    return startAreaM2 === endAreaM2 ? length : { ...length, farSection: square(areaAt(to)) };
  };
  if (filled === null) return [stretch(0, 1)];
  const fluid = fibreFluid(filled.fill, true, air);
  const first = { ...stretch(0, filled.share), fluid };
  return filled.share < 1 ? [first, stretch(filled.share, 1)] : [first];
}
