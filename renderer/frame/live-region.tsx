import { useSession } from '../workbench';

/** Says to screen readers what has just happened, without moving the focus. */
export function LiveRegion() {
  const { text, count } = useSession((session) => session.announcement);
  return (
    <div className="aside-hidden" role="status" aria-live="polite">
      <span key={count}>{text}</span>
    </div>
  );
}
