import { type DriverEquivalent, exportForSimulator, type Part, semiInductanceLadder } from '../circuit/index.ts';
import type { Project } from '../document/schema.ts';
import { type Problem, problem, type Result, succeed } from '../messages/problem.ts';
import { derivedOf } from './derivedOf.ts';

/** The band that the text sweeps, and in which semi-inductances are followed. */
const LOW_HZ = 10;
const HIGH_HZ = 20000;

/**
 * The network with its drivers as text for a general circuit simulator (`exportForSimulator`), and remarks on what differs from here.
 *
 * Drivers are their equivalents in free air: Re, Le, the semi-inductance as a ladder, and Bl²/Rms, Mms/Bl² and Cms Bl² in parallel. A
 * driver that is not fully known is a comment. Remarks name the fit error of each ladder, measured impedances that are not used,
 * and what became a comment. An amplifier without settings is the Problem `speaker.unknown-amplifier`.
 * Source of the equivalents: R. H. Small, "Direct-Radiator Loudspeaker System Analysis", 1972 (from memory; see `driverFigures`).
 * @example simulatorText(project)
 */
export function simulatorText(
  project: Project,
): Result<{ readonly text: string; readonly remarks: readonly Problem[] }> {
  const { chain, network } = project;
  const parts: readonly Part[] = network.parts;
  const without = parts.filter(({ kind, id }) => kind === 'amplifier' && !chain.amplifiers.some((a) => a.id === id));
  if (without.length > 0) {
    return { ok: false, problems: without.map(({ id }) => problem('speaker.unknown-amplifier', { kind: 'part', id })) };
  }
  const drivers = new Map<string, DriverEquivalent>();
  for (const driver of project.drivers) {
    const read = derivedOf(driver);
    if (!read.ok) continue;
    const { parameters, derived } = read.value;
    const { reOhm, leH, semiInductance } = parameters;
    const motional = { ohm: derived.resOhm, farad: derived.cmesF, henry: derived.lcesH };
    drivers.set(driver.id, { reOhm, leH, semiInductance, motional });
  }
  const { text, remarks } = exportForSimulator(parts, {
    title: project.name,
    amplifiers: chain.amplifiers.map(({ id, outputResistanceOhm, cableOhm }) => ({
      id,
      voltageV: chain.driveV,
      resistanceOhm: outputResistanceOhm + cableOhm,
    })),
    drivers,
    lowHz: LOW_HZ,
    highHz: HIGH_HZ,
  });
  return succeed({ text, remarks: [...speakerRemarks(project, drivers), ...remarks] });
}

function speakerRemarks(project: Project, equivalents: ReadonlyMap<string, DriverEquivalent>): Problem[] {
  const remarks: Problem[] = [];
  for (const part of project.network.parts) {
    if (part.kind !== 'speaker') continue;
    const equivalent = equivalents.get(part.driverId);
    if (equivalent === undefined) continue;
    const place = { kind: 'part', id: part.id } as const;
    if (remarks.length === 0) remarks.push(problem('speaker.export-free-air', { kind: 'document' }));
    const driver = project.drivers.find(({ id }) => id === part.driverId);
    if (driver?.measured?.impedanceCurveId) remarks.push(problem('speaker.export-measured', place, { part: part.id }));
    const { semiInductance } = equivalent;
    const ladder = semiInductance && semiInductanceLadder(semiInductance, LOW_HZ, HIGH_HZ);
    if (!ladder) continue;
    const band = { lowHz: LOW_HZ, highHz: HIGH_HZ };
    const fit = { sections: ladder.sections.length, errorPercent: 100 * ladder.greatestError };
    remarks.push(problem('speaker.export-fit', place, { part: part.id, ...fit, ...band }));
  }
  return remarks;
}
