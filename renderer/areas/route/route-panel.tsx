import { ROUTE_SECTIONS } from './route-sections';

/** What is chosen, and what is known of the tray. */
export function RoutePanel() {
  return (
    <aside className="route-panel" aria-label="Chosen, and what is known">
      {ROUTE_SECTIONS.map(({ id, Section }) => (
        <Section key={id} />
      ))}
    </aside>
  );
}
