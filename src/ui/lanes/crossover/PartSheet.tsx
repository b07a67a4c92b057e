import { useEffect, useId, useLayoutEffect, useRef } from 'react';
import type { Part } from '../../../core/circuit/part.ts';
import type { Command } from '../../../core/document/command.ts';
import type { Project } from '../../../core/document/schema.ts';
import { placeInPage } from '../../fields/placeInPage.ts';
import { useWorkbench } from '../../useWorkbench.ts';
import { useWorkbenchStore } from '../../useWorkbenchStore.ts';
import { RefusingButton } from '../RefusingButton.tsx';
import { AcrossForm } from './AcrossForm.tsx';
import { arrivedPart, focusPart } from './arrivedPart.ts';
import { EndChoice } from './EndChoice.tsx';
import { KindIcon } from './KindIcon.tsx';
import { newPart, PASSIVE_KINDS, type PassiveKind } from './newParts.ts';
import { PartOtherValues } from './PartOtherValues.tsx';
import { KIND_WORDS, partName } from './partNames.ts';
import './part-sheet.css';

const isPassive = (part: Part): boolean => part.kind !== 'speaker' && part.kind !== 'amplifier';

/**
 * All that can be done with one part, beside it: its other values, swapping, neighbours in series and across, moving an
 * end, removing, reversing a speaker. Not modal; Escape, its button or a press elsewhere closes it.
 */
export function PartSheet({
  part,
  anchor,
  close,
  startSection,
}: {
  readonly part: Part;
  readonly anchor: DOMRect;
  readonly close: (how: 'keyboard' | 'elsewhere') => void;
  /** Opens the textbook sections for this speaker. */
  readonly startSection: (speakerId: string) => void;
}) {
  const store = useWorkbenchStore();
  const drivers = useWorkbench((s) => s.project.drivers);
  const system = useWorkbench((s) => s.settings.units);
  const sheet = useRef<HTMLDivElement>(null);
  const titleId = useId();
  const passive = isPassive(part);
  /** A part that has just been put in becomes the picked one, its value ready to be set. */
  const arrived = (before: Project, now: Project) => {
    const id = arrivedPart(before, now);
    if (id === null) return;
    close('elsewhere');
    store.getState().select({ kind: 'part', id });
    focusPart(id);
  };

  useLayoutEffect(() => {
    if (!sheet.current) return;
    placeInPage(sheet.current, anchor, 'beside');
    sheet.current.focus({ preventScroll: true });
  }, [anchor]);
  useEffect(() => {
    const onPress = (event: PointerEvent) => {
      if (event.target instanceof Node && !sheet.current?.contains(event.target)) close('elsewhere');
    };
    window.addEventListener('pointerdown', onPress, true);
    return () => window.removeEventListener('pointerdown', onPress, true);
  }, [close]);

  const buttons = (what: string, command: (kind: PassiveKind) => Command) => (
    <span className="part-sheet-kinds">
      {PASSIVE_KINDS.map((kind) => (
        <RefusingButton
          key={kind}
          className="lane-button part-sheet-kind"
          label={`${what}: ${KIND_WORDS[kind]}`}
          command={() => command(kind)}
          after={arrived}
        >
          <KindIcon kind={kind} />
        </RefusingButton>
      ))}
    </span>
  );
  return (
    <div
      ref={sheet}
      popover="manual"
      className="part-sheet"
      role="dialog"
      tabIndex={-1}
      aria-labelledby={titleId}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.stopPropagation();
        close('keyboard');
      }}
    >
      <header className="part-sheet-head">
        <h3 id={titleId}>{partName(part, drivers, system)}</h3>
        <button type="button" className="lane-button" aria-label="Close" onClick={() => close('keyboard')}>
          ×
        </button>
      </header>
      <PartOtherValues part={part} />
      <div className="part-sheet-rows">
        {passive ? (
          <>
            <span className="lane-soft">swap for a</span>
            {buttons('Swap for a', (kind) => ({ type: 'swap-part', partId: part.id, part: newPart(kind, 'series') }))}
          </>
        ) : null}
        <span className="lane-soft">in series before</span>
        {buttons('Insert in series before', (kind) => ({
          type: 'insert-in-series',
          partId: part.id,
          end: 0,
          part: newPart(kind, 'series'),
        }))}
        {part.kind === 'amplifier' ? null : (
          <>
            <span className="lane-soft">in series after</span>
            {buttons('Insert in series after', (kind) => ({
              type: 'insert-in-series',
              partId: part.id,
              end: 1,
              part: newPart(kind, 'series'),
            }))}
          </>
        )}
        <AcrossForm part={part} added={arrived} />
        <span className="lane-soft">ends at</span>
        <span className="part-sheet-kinds">
          <EndChoice part={part} end={0} />
          <EndChoice part={part} end={1} />
        </span>
      </div>
      <div className="part-sheet-actions">
        {passive ? (
          <>
            <RefusingButton
              command={() => ({ type: 'remove-part', partId: part.id, how: 'close-up' })}
              after={() => close('keyboard')}
            >
              remove and close up
            </RefusingButton>
            <RefusingButton
              command={() => ({ type: 'remove-part', partId: part.id, how: 'leave-open' })}
              after={() => close('keyboard')}
            >
              remove, leave open
            </RefusingButton>
          </>
        ) : null}
        {part.kind === 'speaker' ? (
          <>
            <RefusingButton command={() => ({ type: 'reverse-speaker', partId: part.id })}>reverse it</RefusingButton>
            <button type="button" className="lane-button" onClick={() => startSection(part.id)}>
              textbook section before it…
            </button>
          </>
        ) : null}
      </div>
    </div>
  );
}
