import { type Problem, problem, type Result, succeed } from '../../messages/problem.ts';
import { RETURN } from '../branch.ts';
import type { Part } from '../part.ts';
import { netlistLines } from './netlistLines.ts';
import { netlistPart } from './netlistPart.ts';

/**
 * Reads a network in the general R/L/C notation of circuit simulators:
 *
 *     * comment
 *     V1 amp 0               amplifier channel: node and return
 *     L1 amp w 2.2m dcr=0.3  coil; `tand=` gives the loss tangent of a core
 *     C1 w 0 33u esr=0.05    capacitor
 *     R1 w z 6.8 rated=10    resistor; rated power in watts
 *     J1 amp amp2            a link that can be taken off
 *     LS1 w 0 woofer         speaker: plus, minus, the driver's name ("in quotation marks" where it has spaces)
 *
 * Names and suffixes are read in either case; the spelling that comes first is kept. A decimal comma is read as a point,
 * but 1,000 is refused since it could be a thousand. `gnd` is the return, node 0.
 * Nothing is skipped in silence: every statement that is not understood is a Problem with its line number, all of them at
 * once (`circuit.netlist-*`).
 * Source: the notation goes back to L. W. Nagel, D. O. Pederson, "SPICE", Univ. of California ERL-M382, 1973 (from memory).
 * @example parseNetlist('R1 in 0 8.2')
 */
export function parseNetlist(text: string): Result<Part[]> {
  const { lines, problems } = netlistLines(text);
  const found: Problem[] = [...problems];
  const parts: Part[] = [];
  const lineOf = new Map<string, number>();
  const spelling = new Map<string, string>([['gnd', RETURN]]);
  const spelled = (node: string): string => {
    const key = node.toLowerCase();
    const known = spelling.get(key);
    if (known === undefined) spelling.set(key, node);
    return known ?? node;
  };
  for (const line of lines) {
    const read = netlistPart(line);
    if (!read.ok) {
      found.push(...read.problems);
      continue;
    }
    const part = read.value;
    const key = part.id.toLowerCase();
    const before = lineOf.get(key);
    if (before !== undefined) {
      found.push(
        problem('circuit.netlist-duplicate', { kind: 'line', line: line.line }, { part: part.id, otherLine: before }),
      );
      continue;
    }
    lineOf.set(key, line.line);
    parts.push({ ...part, nodes: [spelled(part.nodes[0]), spelled(part.nodes[1])] });
  }
  if (found.length === 0 && parts.length === 0) found.push(problem('circuit.netlist-empty', { kind: 'document' }));
  if (found.length > 0) return { ok: false, problems: found.sort((a, b) => (a.place.line ?? 0) - (b.place.line ?? 0)) };
  return succeed(parts);
}
