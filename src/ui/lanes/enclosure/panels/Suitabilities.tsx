import type { BoxKind, Suitability } from '../../../../core/design/suitability.ts';
import { suitabilityOf } from '../../../../core/design/suitabilityOf.ts';
import { word } from '../../../../core/messages/word.ts';
import { useCalmWorkbench } from '../../../useCalmWorkbench.ts';

export const VERDICT: Readonly<Record<Suitability['verdict'], string>> = {
  suits: 'suits this driver',
  possible: 'possible',
  poor: 'poor for this driver',
};
const KIND: Readonly<Record<BoxKind, string>> = {
  sealed: 'Sealed',
  vented: 'Vented',
  'passive-radiator': 'Passive radiator',
  'band-pass': 'Band-pass',
  'open-baffle': 'Open baffle',
};

/** How well a speaker's driver suits each kind of box: verdict, reason with its numbers, source. */
export function Suitabilities({ speakerId, name }: { readonly speakerId: string; readonly name: string }) {
  const project = useCalmWorkbench((s) => s.project);
  const all = suitabilityOf(project, speakerId);
  if (all.length === 0) return null;
  return (
    <details className="enclosure-fold">
      <summary>What box suits the {name}?</summary>
      <p className="enclosure-small lane-soft">Driver alone, nothing in series.</p>
      <dl className="box-verdicts">
        {all.map(({ kind, verdict, reason, source }) => (
          <div key={kind} data-verdict={verdict}>
            <dt>
              {KIND[kind]}: <b>{VERDICT[verdict]}</b>
            </dt>
            <dd>
              {word(reason).sentence} <span className="lane-soft">Source: {source}.</span>
            </dd>
          </div>
        ))}
      </dl>
    </details>
  );
}
