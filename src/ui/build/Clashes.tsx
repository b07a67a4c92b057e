import type { Interference } from '../../core/build/fit/index.ts';
import { ProblemList } from './ProblemList.tsx';
import type { Build } from './read/readBuild.ts';

/** What is in the way of what: first what cannot be built, then what is tight. */
export function Clashes({ build }: { readonly build: Build }) {
  const { clashes, names, read, project } = build;
  const left = [
    ...(read.inside.length > 0
      ? [`The board they sit on is listed; its hole is not: ${read.inside.map(names.thing).join(', ')}.`]
      : []),
    ...(project.enclosure.passiveRadiators.length > 0
      ? ['Passive radiators are not on this sheet: add their holes yourself.']
      : []),
    ...(project.enclosure.lines.length > 0
      ? ['Transmission lines are not on this sheet: add their boards yourself.']
      : []),
  ];
  const found = (severity: Interference['severity']) =>
    clashes.ok ? clashes.value.filter((clash) => clash.severity === severity).map(names.named) : [];
  const [faults, tight] = [found('fault'), found('warning')];
  return (
    <section className="build-section" aria-labelledby="build-clashes">
      <h2 id="build-clashes">Does it fit?</h2>
      {clashes.ok ? null : <ProblemList problems={clashes.problems.map(names.named)} />}
      {clashes.ok && faults.length === 0 && tight.length === 0 ? (
        <p>Nothing is in the way of anything else: drivers, ports, braces and edges keep clear of one another.</p>
      ) : null}
      {faults.length > 0 ? (
        <div className="build-faults">
          <h3>Cannot be built as it stands</h3>
          <ProblemList problems={faults} />
        </div>
      ) : null}
      {tight.length > 0 ? (
        <div className="build-tight">
          <h3>Tight</h3>
          <ProblemList problems={tight} />
        </div>
      ) : null}
      {left.map((sentence) => (
        <p key={sentence} className="build-warn">
          {sentence}
        </p>
      ))}
    </section>
  );
}
