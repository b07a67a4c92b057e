import type { Enclosure } from '../../../../../core/document/schema.ts';

/** Whether there is a board and no box: nothing but drivers in the open, none of them with air closed in behind it. */
export const isBareBaffle = ({ chambers, mounts, lines }: Enclosure): boolean =>
  chambers.length === 0 && lines.length === 0 && mounts.some(({ back }) => back === 'open');
