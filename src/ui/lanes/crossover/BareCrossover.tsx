import { useWays } from '../useWays.ts';

/** Said where a circuit has no parts yet: how to begin. */
export function BareCrossover({ startSection }: { readonly startSection: (speakerId: string) => void }) {
  const [first] = useWays();
  return (
    <p className="lanes-empty">
      No crossover parts yet. Begin with{' '}
      {first ? (
        <button type="button" className="lane-button" onClick={() => startSection(first.speakerId)}>
          a textbook section
        </button>
      ) : (
        'a way'
      )}{' '}
      or pick the speaker in the drawing and put a part before it.
    </p>
  );
}
