import { thingName } from '../../core/document/describe/thingName.ts';
import type { Project } from '../../core/document/schema.ts';
import type { Selection } from '../../state/workbench.ts';

/** What a selection is called on the screen: "R1", "woofer chamber", "the port". */
export const selectionWords = ({ kind, id }: NonNullable<Selection>, project: Project): string =>
  kind === 'speaker' ? id : (thingName(kind, id, project) ?? id);
