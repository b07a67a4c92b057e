import type { LimitBarPlan } from './limitBars.ts';

/** A limit as a bar with its amounts in words; past the limit the bar is full and says so by colour and by mark. */
export function LimitBar({ plan }: { readonly plan: LimitBarPlan }) {
  const { name, about, share, amount, where } = plan;
  const past = share !== null && share > 1;
  const filled = share === null ? 0 : Math.min(1, Math.max(0, share));
  return (
    <div className="limit-bar" title={about} data-past={past ? '' : undefined}>
      <span className="limit-bar-name">{name}</span>
      <span className="unseen">{about}: </span>
      <svg className="limit-bar-track" viewBox="0 0 100 6" preserveAspectRatio="none" aria-hidden="true">
        <rect className="limit-bar-ground" width="100" height="6" rx="1.5" />
        <rect className="limit-bar-used" width={(100 * filled).toFixed(1)} height="6" rx="1.5" />
      </svg>
      <span className="limit-bar-amount">
        {past ? '⚠ ' : ''}
        {amount} <span className="limit-bar-where">{where}</span>
      </span>
    </div>
  );
}
