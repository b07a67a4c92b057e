import { portName } from '../../../core/document/describe/portName.ts';
import type { Project } from '../../../core/document/schema.ts';
import type { Problem } from '../../../core/messages/problem.ts';
import { waysInOrder } from '../../waysInOrder.ts';

/** What the boards, chambers and parts of a cabinet are called on the build sheet. */
export interface BuildNames {
  panel(id: string): string;
  space(id: string): string;
  thing(id: string): string;
  /** The same problem with names in place of ids, for its sentence. */
  named<P extends Problem>(flaw: P): P;
}

const WALL_NAMES: Readonly<Record<string, string>> = { left: 'left side', right: 'right side' };
const NAMED_VALUES = ['name', 'other', 'part', 'chamber'] as const;

/**
 * `spaces`: ids of the cabinet's spaces where they are known; those that no chamber has are counted in their order.
 * @example buildNames(project).panel('left') // 'left side'
 */
export function buildNames(project: Project, spaces: readonly string[] = []): BuildNames {
  const unused = spaces.filter((id) => id.startsWith('unused'));
  const { chambers, ports, wood } = project.enclosure;
  const ways = waysInOrder(project);
  const chamberName = (id: string): string | null => {
    const index = chambers.findIndex((chamber) => chamber.id === id);
    return index < 0 ? null : chambers[index]!.name.trim() || `chamber ${index + 1}`;
  };
  const space = (id: string): string => {
    const placed = chambers.filter(({ volume }) => volume.kind === 'geometry');
    const whole = placed.length === 1 ? chamberName(placed[0]!.id) : null;
    if (id === 'inside') return whole ?? 'inside';
    if (unused.includes(id)) return unused.length === 1 ? 'unused space' : `unused space ${unused.indexOf(id) + 1}`;
    return chamberName(id) ?? id;
  };
  const brace = (id: string): string | null => {
    const index = wood.braces.findIndex((one) => one.id === id);
    return index < 0 ? null : `brace ${index + 1}`;
  };
  const port = (id: string): string | null => {
    const owner = ports.find((one) => id === one.id || (one.count > 1 && id.startsWith(`${one.id} `)));
    return owner === undefined ? null : portName(id);
  };
  const thing = (id: string): string =>
    ways.find(({ speakerId }) => speakerId === id)?.name ?? port(id) ?? brace(id) ?? chamberName(id) ?? id;
  const panel = (id: string): string => {
    const behind = /^board behind (.+)$/.exec(id)?.[1];
    if (behind !== undefined) return `board behind ${space(behind)}`;
    const slot = /^(.+) (top|bottom|left|right)$/.exec(id);
    const owner = slot === null ? null : port(slot[1]!);
    if (slot !== null && owner !== null) return `${slot[2]} board of ${owner}`;
    return WALL_NAMES[id] ?? brace(id) ?? id;
  };
  const named = <P extends Problem>(flaw: P): P => {
    const names = NAMED_VALUES.flatMap((key) => {
      const id = flaw.values[key];
      if (typeof id !== 'string') return [];
      return [[key, key === 'chamber' ? space(id) : panel(thing(space(id)))] as const];
    });
    return { ...flaw, values: { ...flaw.values, ...Object.fromEntries(names) } };
  };
  return { panel, space, thing, named };
}
