import { grainWords } from './grainWords.ts';
import { bevelWords, cornerWords, noteWords } from './noteWords.ts';
import type { Build, MarkedLine } from './readBuild.ts';

/** What is done to the pieces of a line, in words. */
export function lineNotes(line: MarkedLine, { panels }: Build): readonly string[] {
  const panel = panels.find(({ id }) => id === line.panels[0])!;
  const alike = line.notes.filter(({ kind }) => kind !== 'bevel').map((note) => noteWords(note, line.grain));
  const corners = cornerWords(panel);
  return [...alike, ...bevelWords(panel), ...(corners === null ? [] : [corners])];
}

const quoted = (text: string): string => (/[",\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

/** The cut list for a spreadsheet: comma separated, a decimal point, sizes in millimetres and in fractional inches. */
export function cutListCsv(build: Build, cabinets: number): string {
  const head = 'mark,panels,pieces,length mm,width mm,thickness mm,length in,width in,thickness in,grain,notes';
  const { grained } = build.project.enclosure.wood.stock;
  const rows = build.lines.map((line) => {
    const sizes = [line.length, line.width, line.thickness];
    return [
      line.mark,
      line.panels.map(build.names.panel).join(' + '),
      String(line.count * cabinets),
      ...sizes.map(({ millimetres }) => millimetres),
      ...sizes.map(({ inches }) => inches),
      grainWords(line.grain, grained),
      lineNotes(line, build).join('; '),
    ]
      .map(quoted)
      .join(',');
  });
  return [head, ...rows, ''].join('\n');
}

/** The cut list as lines to read, such as for a message to a timber merchant. */
export function cutListText(build: Build, cabinets: number): string {
  const { grained } = build.project.enclosure.wood.stock;
  const lines = build.lines.map((line) => {
    const { length, width, thickness } = line;
    const size = `${length.millimetres} × ${width.millimetres} × ${thickness.millimetres} mm`;
    const inches = `${length.inches} × ${width.inches} × ${thickness.inches} in`;
    const names = line.panels.map(build.names.panel).join(' + ');
    const notes = lineNotes(line, build).map((note) => `; ${note}`);
    return `${line.mark}  ${line.count * cabinets} pcs  ${size} (${inches}), ${names}, grain ${grainWords(line.grain, grained)}${notes.join('')}`;
  });
  const head = `${build.project.name}: cut list for ${cabinets} ${cabinets === 1 ? 'cabinet' : 'cabinets'}`;
  return [head, 'Length (along the grain) × width × thickness, finished sizes, joints included.', ...lines, ''].join(
    '\n',
  );
}
