import { useState } from 'react';
import { RETURN } from '../../../../core/circuit/branch.ts';
import type { FilterShape } from '../../../../core/circuit/synthesis/index.ts';
import type { Driver, Project } from '../../../../core/document/schema.ts';
import { FieldRow } from '../../../fields/FieldRow.tsx';
import { fieldMessage } from '../../../fields/fieldMessageText.ts';
import { QuantityField } from '../../../fields/QuantityField.tsx';
import { useWorkbench } from '../../../useWorkbench.ts';
import { RefusingButton } from '../../RefusingButton.tsx';
import { mainValueText } from '../partNames.ts';
import { Choice } from './Choice.tsx';
import { roundedSection } from './roundedSection.ts';
import { SECTION_KINDS } from './sectionKinds.ts';
import './section-panel.css';
import { useWays } from '../../useWays.ts';

const FAMILIES = [
  { value: 'butterworth', words: 'Butterworth' },
  { value: 'linkwitz-riley', words: 'Linkwitz–Riley' },
  { value: 'bessel', words: 'Bessel, phases meet' },
];
const ORDERS = [1, 2, 3, 4].map((order) => ({ value: String(order), words: `order ${order}` }));

/** Where most people begin for a driver of this role. */
const USUAL_KIND: Readonly<Record<Driver['role'], string>> = {
  woofer: 'low-pass',
  mid: 'band-pass',
  tweeter: 'high-pass',
  'full-range': 'conjugate-coil',
};

/** Textbook sections as a start: chosen, worked out, shown with source and assumptions, and put before a speaker. */
export function SectionPanel({ speakerId }: { readonly speakerId: string | null }) {
  const ways = useWays();
  const series = useWorkbench((s) => s.settings.series);
  const system = useWorkbench((s) => s.settings.units);
  const [chosenSpeaker, setSpeaker] = useState(speakerId);
  const [chosenKind, setKind] = useState<string | null>(null);
  const [family, setFamily] = useState<FilterShape['family']>('linkwitz-riley');
  const [order, setOrder] = useState('2');
  const [entered, setEntered] = useState<Readonly<Record<string, number>>>({});
  const [isRounded, setRounded] = useState(true);
  const [said, setSaid] = useState<{ readonly words: string; readonly project: Project } | null>(null);
  const isPresent = useWorkbench((s) => s.project === said?.project);

  const way = ways.find((candidate) => candidate.speakerId === chosenSpeaker) ?? ways[0];
  const kindId = chosenKind ?? USUAL_KIND[way?.driver?.role ?? 'woofer'];
  const kind = SECTION_KINDS.find((candidate) => candidate.id === kindId);
  if (!way || !kind) return <p className="lane-soft">A section needs a speaker: add a way first.</p>;
  const shape: FilterShape =
    family === 'bessel' ? { family, order: Number(order), normalisation: 'phase' } : { family, order: Number(order) };
  const numbers = Object.fromEntries(
    kind.numbers.map(({ key, start }) => [key, entered[`${way.speakerId} ${key}`] ?? start(way.driver)]),
  );
  const made = kind.make(numbers, shape);
  const parts = made.ok ? (isRounded ? roundedSection(made.value.parts, series) : made.value.parts) : [];
  // Without a node towards the source the whole section lies across the speaker.
  const isThrough = parts.some((part) => part.nodes.includes('@in'));
  return (
    <section className="section-panel" aria-label="Textbook sections">
      <div className="section-panel-form">
        <Choice
          name="before"
          value={way.speakerId}
          choices={ways.map(({ speakerId: id, name }) => ({ value: id, words: `${name} (${id})` }))}
          choose={setSpeaker}
        />
        <Choice
          name="section"
          value={kind.id}
          choices={SECTION_KINDS.map(({ id, words }) => ({ value: id, words }))}
          choose={setKind}
        />
        {kind.shaped ? (
          <>
            <Choice
              name="family"
              value={family}
              choices={FAMILIES}
              choose={(next) => {
                setFamily(next as FilterShape['family']);
                // This family has even orders only.
                if (next === 'linkwitz-riley' && Number(order) % 2 === 1) setOrder(String(Number(order) + 1));
              }}
            />
            <Choice
              name="slope"
              value={order}
              choices={family === 'linkwitz-riley' ? ORDERS.filter(({ value }) => Number(value) % 2 === 0) : ORDERS}
              choose={setOrder}
            />
          </>
        ) : null}
        {kind.numbers.map((number) => (
          <FieldRow key={number.key} name={number.words}>
            <QuantityField
              label={`${number.words} of the ${kind.words}`}
              kind={number.kind}
              {...(number.stepping ? { stepping: number.stepping } : {})}
              value={numbers[number.key] ?? null}
              keep={(value) => setEntered((before) => ({ ...before, [`${way.speakerId} ${number.key}`]: value }))}
            />
          </FieldRow>
        ))}
      </div>
      {made.ok ? (
        <div className="section-panel-answer">
          <p>
            {parts.map((part, k) => (
              <span key={part.id}>
                {k > 0 ? ', ' : ''}
                <b>{mainValueText(part, system)}</b>{' '}
                {isThrough && !part.nodes.includes(RETURN) ? 'in series' : 'across'}
              </span>
            ))}
          </p>
          <label className="section-panel-rounded">
            <input type="checkbox" checked={isRounded} onChange={(event) => setRounded(event.target.checked)} /> nearest
            values of {series}
          </label>
          <p className="lane-soft">{made.value.assumes}</p>
          <p className="lane-soft">Source: {made.value.source}.</p>
          <RefusingButton
            className="lane-button lane-button-main"
            command={() => ({ type: 'insert-section', speakerId: way.speakerId, parts })}
            after={(before, now) => {
              setSaid({ words: insertedWords(before, now, way.name), project: now });
            }}
          >
            put it before {way.name}
          </RefusingButton>
          <p role="status" className="section-panel-said">
            {said && isPresent ? said.words : ''}
          </p>
        </div>
      ) : (
        <p className="section-panel-refusal">{fieldMessage(made.problems)}</p>
      )}
    </section>
  );
}

/** What has just gone in, by the names that it got. */
function insertedWords(before: Project, now: Project, wayName: string): string {
  const names = now.network.parts.filter(({ id }) => !before.network.parts.some((part) => part.id === id));
  return `${names.map(({ id }) => id).join(', ')} put before ${wayName}; undo takes them out again.`;
}
