import { useLayoutEffect } from 'react';
import { useWorkbench } from './useWorkbench.ts';

/** Writes the chosen colours and type size onto the page, where theme.css finds them. */
export function useLook(): void {
  const theme = useWorkbench((s) => s.settings.theme);
  const largeType = useWorkbench((s) => s.settings.largeType);
  useLayoutEffect(() => {
    const { dataset } = document.documentElement;
    if (theme === 'auto') delete dataset.theme;
    else dataset.theme = theme;
    if (largeType) dataset.large = '';
    else delete dataset.large;
  }, [theme, largeType]);
}
