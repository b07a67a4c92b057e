import type { Problem } from '../../core/messages/problem.ts';
import { word } from '../../core/messages/word.ts';

/** Problems in sentences, each with what to do. */
export function ProblemList({ problems }: { readonly problems: readonly Problem[] }) {
  return (
    <ul className="build-problems">
      {problems.map((found) => {
        const { sentence, remedy } = word(found);
        return (
          <li key={`${found.code} ${found.place.id} ${sentence}`}>
            {sentence} <span className="build-soft">{remedy}</span>
          </li>
        );
      })}
    </ul>
  );
}
