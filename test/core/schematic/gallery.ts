// Draws the test circuits into one page, to be looked at: npx tsx test/core/schematic/gallery.ts FOLDER
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Part } from '../../../src/core/circuit/part.ts';
import {
  drawSchematic,
  type PlacedPart,
  type SchematicPlan,
  type TextAnchor,
} from '../../../src/core/schematic/index.ts';
import { symbolOf } from '../../../src/plot/symbols.ts';
import { circuits } from './circuits.ts';

const colours = ['#b5511f', '#1f7a68', '#5b4fa3', '#8a6d1a', '#666666'];
const values: Record<Part['kind'], string> = {
  resistor: '4.7 Ω',
  capacitor: '8.2 µF',
  inductor: '0.47 mH',
  jumper: 'link',
  speaker: '8 Ω',
  amplifier: '2.83 V',
};

function text({ x, y, align }: TextAnchor, words: string, weight: string): string {
  return `<text x="${x}" y="${y}" text-anchor="${align}" class="${weight}">${words}</text>`;
}

function symbol(part: PlacedPart, isCored: boolean): string {
  const [first, second] = part.pins;
  const isReversed = first.x > second.x || first.y > second.y;
  const { outline, solid } = symbolOf(part.kind, isReversed, isCored);
  const turn = part.orientation === 'vertical' ? ' rotate(90)' : '';
  const at = `translate(${part.centre.x} ${part.centre.y})${turn}`;
  return `<g transform="${at}"><path d="${outline}"/><path d="${solid}" class="solid"/></g>`;
}

/** One plan as an SVG picture, `unit` pixels to a drawing unit. */
function picture(plan: SchematicPlan, unit: number): string {
  const lanes = plan.lanes.map(
    (lane, k) =>
      `<rect x="0" y="${lane.top + 0.15}" width="0.3" height="${lane.bottom - lane.top - 0.3}" fill="${colours[lane.kind === 'way' ? k % 4 : 4]}" stroke="none" opacity="${lane.kind === 'shared' ? 0.2 : 1}"/>`,
  );
  const wires = plan.wires.map(
    (wire) => `<polyline points="${wire.points.map(({ x, y }) => `${x},${y}`).join(' ')}"/>`,
  );
  const dots = plan.dots.map(({ x, y }) => `<circle cx="${x}" cy="${y}" r="0.18" class="solid"/>`);
  const parts = plan.parts.map(
    (part) =>
      symbol(part, part.partId === 'L5') +
      text(part.valueAnchor, values[part.kind], 'value') +
      text(part.nameAnchor, part.partId, 'name'),
  );
  const size = `width="${plan.width * unit}" height="${plan.height * unit}" viewBox="0 0 ${plan.width} ${plan.height}"`;
  return `<svg ${size}>${[...lanes, ...wires, ...dots, ...parts].join('')}</svg>`;
}

const style = `body{font:14px sans-serif;margin:20px;background:#fffdf8}h2{font-size:15px;margin:24px 0 6px}
svg{display:block;border:1px solid #e6e0d4}
path,polyline,circle{fill:none;stroke:#222;stroke-width:.13;stroke-linejoin:round;stroke-linecap:round}
.solid{fill:#222;stroke:none}text{font-size:.98px;dominant-baseline:central;fill:#222}.value{font-weight:600}.name{fill:#667}`;

const folder = process.argv[2];
if (folder === undefined) throw new Error('say in which folder the page shall be written');
mkdirSync(folder, { recursive: true });
const sections = circuits.map(({ title, parts, order }, k) => {
  const plan = drawSchematic(parts, order);
  return `<section id="c${k}"><h2>${title}: ${parts.length} parts, ${plan.width} × ${plan.height} units</h2>${picture(plan, 12)}</section>`;
});
const page = join(folder, 'schematics.html');
writeFileSync(
  page,
  `<!doctype html><meta charset="utf-8"><title>Schematics</title><style>${style}</style>${sections.join('\n')}`,
);
process.stdout.write(`${page}\n`);
