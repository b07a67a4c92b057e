import { useContext, useEffect, useRef, useState } from 'react';
import type { SheetLayout } from '../../../core/build/sheets/index.ts';
import type { Result } from '../../../core/messages/problem.ts';
import type { CuttingJob } from '../../../state/cutSheets.ts';
import { PageServicesContext } from '../../PageServices.ts';

export interface SheetLayouts<About> {
  /** What stood beside the job that the layouts were made for; null before the first. */
  readonly about: About | null;
  /** One for each group of the job that they were made for, as far as they have come. */
  readonly layouts: readonly (Result<SheetLayout> | undefined)[];
  /** They were made for other parts or boards than those of now. */
  readonly stale: boolean;
  readonly state: 'waiting' | 'searching' | 'done' | 'stopped' | 'failed';
  readonly share: number;
  stop(): void;
}

type Held<About> = Omit<SheetLayouts<About>, 'stale' | 'stop'> & { readonly key: string };

/** A drag changes the parts many times a second: the search begins when they have rested for this long. */
const REST_MS = 200;
const NOTHING = { key: '', about: null, layouts: [], state: 'waiting', share: 0 } as const;

/**
 * The sheet layouts of a job, searched for away from this thread; an answer for an older job is dropped. `about` is kept with the
 * layouts that were made beside it, so that old ones are not shown under new names.
 */
export function useSheetLayouts<About>(job: CuttingJob, about: About): SheetLayouts<About> {
  const { cutSheets } = useContext(PageServicesContext);
  const key = JSON.stringify(job);
  const [held, setHeld] = useState<Held<About>>(NOTHING);
  const beside = useRef(about);
  beside.current = about;
  const end = useRef<() => void>(() => undefined);
  useEffect(() => {
    const start = (): void => {
      let found: Held<About> = { ...NOTHING, key, about: beside.current, state: 'searching' };
      const next = (changes: Partial<Held<About>>): void => {
        found = { ...found, ...changes };
        // What stands on the screen is kept, dimmed, until there is a first layout to take its place.
        if (found.layouts.length > 0 || found.state !== 'searching') setHeld(found);
      };
      end.current = cutSheets(JSON.parse(key), (answer) => {
        if (answer.kind === 'layout') {
          const layouts = [...found.layouts];
          layouts[answer.group] = answer.layout;
          next({ layouts });
        } else if (answer.kind === 'progress') next({ share: answer.share });
        else next({ state: answer.kind, share: 1 });
      });
    };
    const timer = window.setTimeout(start, REST_MS);
    return () => {
      window.clearTimeout(timer);
      end.current();
    };
  }, [key, cutSheets]);
  return {
    ...held,
    stale: held.key !== key,
    stop: () => {
      end.current();
      setHeld((now) => ({ ...now, state: 'stopped' }));
    },
  };
}
