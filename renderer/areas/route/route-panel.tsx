import { ROUTE_SECTIONS } from './route-sections';
import { toMap } from './tray/to-and-fro';

/** What is chosen, and what is known of the tray. */
export function RoutePanel() {
  return (
    <aside
      className="route-panel"
      aria-label="Chosen, and what is known"
      onKeyDown={(event) => {
        if (event.key === 'Escape') toMap();
      }}
    >
      {ROUTE_SECTIONS.map(({ id, Section }) => (
        <Section key={id} />
      ))}
    </aside>
  );
}
