import { alike } from '../document/commands/withChanges.ts';
import type { SpeakerModel } from './model.ts';

/**
 * The same model with chambers, ports, passive radiators and lines taken over from an earlier one where they are alike, so that
 * what was worked out for them can be taken over too.
 */
export function keepPieces(model: SpeakerModel, earlier: SpeakerModel): SpeakerModel {
  const kept = <T extends { readonly id: string }>(now: readonly T[], before: readonly T[]): readonly T[] =>
    now.map((piece) => {
      const known = before.find(({ id }) => id === piece.id);
      return known !== undefined && alike(known, piece) ? known : piece;
    });
  return {
    ...model,
    chambers: kept(model.chambers, earlier.chambers),
    ports: kept(model.ports, earlier.ports),
    passiveRadiators: kept(model.passiveRadiators, earlier.passiveRadiators),
    lines: kept(model.lines ?? [], earlier.lines ?? []),
  };
}
