import type { Simulation as Spice } from 'eecircuit-engine';
import { airProperties, baffleFactorInto, edgePaths, portEffectiveLengthM } from '../../../src/core/acoustics/index.ts';
import type { Project } from '../../../src/core/document/schema.ts';

// The demo three-way as a netlist for ngspice, at one frequency at a time, so that a semi-inductance can be written as the
// resistance and inductance it has there. Coil, motor and box are elements and controlled sources; their values are worked out
// here from the data sheets. Pressure at the listening point is then p = jωρU e^(-jkr)/(2πr) times the core's baffle factor.

/** ngspice wants a way for direct current from every node: so far above all else that nothing flows there, Pa·s/m³. */
const AT_REST = 1e14;

interface Complex {
  readonly re: number;
  readonly im: number;
}
const times = (a: Complex, b: Complex): Complex => ({ re: a.re * b.re - a.im * b.im, im: a.re * b.im + a.im * b.re });
const plus = (a: Complex, b: Complex): Complex => ({ re: a.re + b.re, im: a.im + b.im });

const airOf = (project: Project) => {
  const air = airProperties(project.air);
  if (!air.ok) throw new Error('The air of the project cannot be computed.');
  return air.value;
};

/** Motor, moving parts and coil from the numbers that a sheet gives: Vas or Mms, Qes or Bl. */
function motorOf(project: Project, driverId: string) {
  const { entered } = project.drivers.find((d) => d.id === driverId)!;
  const sheetAir = airProperties({ temperatureC: 20, pressurePa: 101325, humidityFraction: 0.5 });
  if (!sheetAir.ok) throw new Error('The default air cannot be computed.');
  const { densityKgPerM3, soundSpeedMPerS } = sheetAir.value;
  const { sdM2, fsHz, reOhm, qms } = entered as { sdM2: number; fsHz: number; reOhm: number; qms: number };
  const omega = 2 * Math.PI * fsHz;
  const cms =
    entered.vasM3 === undefined
      ? 1 / (omega ** 2 * entered.mmsKg!)
      : entered.vasM3 / (densityKgPerM3 * soundSpeedMPerS ** 2 * sdM2 ** 2);
  const mms = 1 / (omega ** 2 * cms);
  const bl = entered.blTm ?? Math.sqrt((omega * mms * reOhm) / entered.qes!);
  return { sdM2, reOhm, cms, mms, rms: (omega * mms) / qms, bl, le: entered.leH ?? 0, semi: entered.semiInductance };
}

function chamberLines(project: Project, rhoC2: number): string[] {
  const { enclosure } = project;
  const { widthM, depthM, panelM } = enclosure;
  const density = airOf(project).densityKgPerM3;
  return enclosure.chambers.flatMap((chamber) => {
    if (chamber.volume.kind !== 'geometry') throw new Error('This check reads chambers by their bounds.');
    const { bottomM, topM, depthM: own } = chamber.volume;
    const ports = enclosure.ports.filter((p) => p.chamberId === chamber.id);
    let net = (widthM - 2 * panelM) * (topM - bottomM) * (own ?? depthM - 2 * panelM) - chamber.bracesM3;
    for (const mount of enclosure.mounts.filter((m) => m.chamberId === chamber.id)) {
      const part = project.network.parts.find((p) => p.id === mount.partId)!;
      if (part.kind === 'speaker') net -= project.drivers.find((d) => d.id === part.driverId)!.displacementM3;
    }
    for (const { shape, wallM, lengthM } of ports) {
      if (shape.kind !== 'slot') throw new Error('This check reads slot ports.');
      net -= shape.widthM * (shape.heightM + wallM) * (lengthM - panelM);
    }
    const cab = (net * chamber.fillGain) / rhoC2;
    const { id, leak, absorption } = chamber;
    const lossOhm = absorption === null ? 1e-9 : 1 / (2 * Math.PI * absorption.atHz * cab * absorption.q);
    return [
      `Cair${id} air${id} abs${id} ${cab}`,
      `Rabs${id} abs${id} 0 ${lossOhm}`,
      `Rdc${id} air${id} 0 ${AT_REST}`,
      ...(leak === null ? [] : [`Rleak${id} air${id} 0 ${leak.q / (2 * Math.PI * leak.atHz * cab)}`]),
      ...ports.flatMap((port) => {
        if (port.shape.kind !== 'slot') return [];
        const area = port.shape.widthM * port.shape.heightM;
        const lossR = port.loss === null ? 1e-9 : 1 / (2 * Math.PI * port.loss.atHz * cab * port.loss.q);
        return [
          `L${port.id} air${id} q${port.id} ${(density * portEffectiveLengthM(port)) / area}`,
          `R${port.id} q${port.id} 0 ${lossR}`,
        ];
      }),
    ];
  });
}

function netlist(project: Project, hz: number): string {
  const omega = 2 * Math.PI * hz;
  const { densityKgPerM3, soundSpeedMPerS } = airOf(project);
  const amplifier = project.chain.amplifiers[0]!;
  const lines = ['loudspeaker', `Vsrc src 0 DC 0 AC ${project.chain.driveV}`];
  for (const part of project.network.parts) {
    const [a, b] = part.nodes;
    const inner = `x${part.id}`;
    if (part.kind === 'amplifier') lines.push(`Rsrc src ${a} ${amplifier.outputResistanceOhm + amplifier.cableOhm}`);
    if (part.kind === 'resistor') lines.push(`${part.id} ${a} ${b} ${part.ohm}`);
    if (part.kind === 'jumper') lines.push(`R${part.id} ${a} ${b} 0.001`);
    if (part.kind === 'capacitor')
      lines.push(`${part.id} ${a} ${inner} ${part.farad}`, `R${inner} ${inner} ${b} ${part.esrOhm}`);
    if (part.kind === 'inductor') {
      const loss = part.dcrOhm + omega * part.henry * part.coreLossTangent;
      lines.push(`${part.id} ${a} ${inner} ${part.henry}`, `R${inner} ${inner} ${b} ${loss}`);
    }
    if (part.kind === 'speaker') {
      const { sdM2, reOhm, cms, mms, rms, bl, le, semi } = motorOf(project, part.driverId);
      const size = semi === undefined ? 0 : semi.kOhmSn * omega ** semi.exponent;
      const angle = semi === undefined ? 0 : (semi.exponent * Math.PI) / 2;
      const chamber = project.enclosure.mounts.find((m) => m.partId === part.id)!.chamberId;
      const behind = chamber === null ? '0' : `air${chamber}`;
      lines.push(
        `R${inner} ${a} y${part.id} ${reOhm + size * Math.cos(angle)}`,
        `L${inner} y${part.id} emf${part.id} ${le + (size * Math.sin(angle)) / omega}`,
        `G1${inner} emf${part.id} ${b} cone${part.id} ${behind} ${sdM2 / bl}`,
        `G2${inner} ${behind} cone${part.id} emf${part.id} ${b} ${sdM2 / bl}`,
        `Rm${inner} cone${part.id} m1${part.id} ${rms / sdM2 ** 2}`,
        `Lm${inner} m1${part.id} m2${part.id} ${mms / sdM2 ** 2}`,
        `Cm${inner} m2${part.id} 0 ${cms * sdM2 ** 2}`,
        `Rdc${inner} m2${part.id} 0 ${AT_REST}`,
      );
    }
  }
  lines.push(...chamberLines(project, densityKgPerM3 * soundSpeedMPerS ** 2));
  return [...lines, `.ac lin 1 ${hz} ${hz}`, '.end', ''].join('\n');
}

async function potentialsAt(spice: Spice, project: Project, hz: number): Promise<(node: string) => Complex> {
  spice.setNetList(netlist(project, hz));
  const result = await spice.runSim();
  if (result.dataType !== 'complex') throw new Error(spice.getError().join('\n'));
  return (node) => {
    if (node === '0') return { re: 0, im: 0 };
    const found = result.data.find((d) => d.name.toLowerCase() === `v(${node.toLowerCase()})`)?.values[0];
    if (found === undefined) throw new Error(`ngspice knows no node ${node}.`);
    return { re: found.real, im: found.img };
  };
}

/** Level at the listening point, dB re 20 µPa, with the circuit solved by ngspice. */
export async function levelByNgspice(spice: Spice, project: Project, hz: number): Promise<number> {
  const at = await potentialsAt(spice, project, hz);
  const { densityKgPerM3, soundSpeedMPerS } = airOf(project);
  const { enclosure, listening } = project;
  const omega = 2 * Math.PI * hz;
  const ear = { xM: 0, yM: listening.heightM - listening.standHeightM, zM: listening.distanceM };
  const heard = (flow: Complex, place: { xM: number; yM: number; zM: number }, radiusM: number): Complex => {
    const across = Math.hypot(ear.xM - place.xM, ear.yM - place.yM);
    const distanceM = Math.hypot(across, ear.zM - place.zM);
    const factor = { re: new Float64Array(1), im: new Float64Array(1) };
    const offAxisDeg = (Math.atan2(across, ear.zM) * 180) / Math.PI;
    const edges = edgePaths(enclosure, place, ear);
    baffleFactorInto(factor, edges, { pistonRadiusM: radiusM, offAxisDeg }, Float64Array.of(omega), soundSpeedMPerS);
    const size = (omega * densityKgPerM3) / (2 * Math.PI * distanceM);
    const phase = Math.PI / 2 - (omega * distanceM) / soundSpeedMPerS;
    const travel = { re: size * Math.cos(phase), im: size * Math.sin(phase) };
    return times(times(flow, travel), { re: factor.re[0]!, im: factor.im[0]! });
  };
  let sum: Complex = { re: 0, im: 0 };
  for (const part of project.network.parts) {
    if (part.kind !== 'speaker') continue;
    const { sdM2, bl } = motorOf(project, part.driverId);
    const emf = at(`emf${part.id}`);
    const minus = at(part.nodes[1]);
    const flow = { re: ((emf.re - minus.re) * sdM2) / bl, im: ((emf.im - minus.im) * sdM2) / bl };
    const mount = enclosure.mounts.find((m) => m.partId === part.id)!;
    sum = plus(sum, heard(flow, { xM: mount.xM, yM: mount.yM, zM: mount.acousticCentreZM }, Math.sqrt(sdM2 / Math.PI)));
  }
  for (const port of enclosure.ports) {
    if (port.shape.kind !== 'slot') continue;
    const area = port.shape.widthM * port.shape.heightM;
    const before = at(`air${port.chamberId}`);
    const after = at(`q${port.id}`);
    const mass = (omega * densityKgPerM3 * portEffectiveLengthM(port)) / area;
    // Flow through the mass: (v1 - v2) / jωM.
    const flow = { re: (before.im - after.im) / mass, im: -(before.re - after.re) / mass };
    sum = plus(sum, heard(flow, { xM: port.xM, yM: port.yM, zM: 0 }, Math.sqrt(area / Math.PI)));
  }
  return 20 * Math.log10(Math.hypot(sum.re, sum.im) / 20e-6);
}

/** Magnitude of the impedance behind the amplifier's own resistance and cable, ohm, with the circuit solved by ngspice. */
export async function impedanceByNgspice(spice: Spice, project: Project, hz: number): Promise<number> {
  const at = await potentialsAt(spice, project, hz);
  const { outputResistanceOhm, cableOhm } = project.chain.amplifiers[0]!;
  const behind = at(project.network.parts.find((p) => p.kind === 'amplifier')!.nodes[0]);
  const source = at('src');
  const current = Math.hypot(source.re - behind.re, source.im - behind.im) / (outputResistanceOhm + cableOhm);
  return Math.hypot(behind.re, behind.im) / current;
}
