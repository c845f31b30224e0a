import { Cable, FileText, ListChecks, type LucideIcon, Route, Stethoscope } from 'lucide-react';
import { Button } from 'react-aria-components/Button';
import type { Area } from '../store/session';
import { useSession, useWorkbench } from '../workbench';

interface RailEntry {
  readonly area: Area;
  readonly label: string;
  readonly icon: LucideIcon;
}

/** The work areas, as verbs. */
const ENTRIES: readonly RailEntry[] = [
  { area: 'document', label: 'Document', icon: FileText },
  { area: 'wire', label: 'Wire', icon: Cable },
  { area: 'route', label: 'Route', icon: Route },
  { area: 'diagnose', label: 'Diagnose', icon: Stethoscope },
  { area: 'hand-over', label: 'Hand over', icon: ListChecks },
];

export function Rail() {
  const { session } = useWorkbench();
  const area = useSession((state) => state.area);
  return (
    <nav className="rail" aria-label="Work areas">
      {ENTRIES.map(({ area: id, label, icon: Icon }) => (
        <Button
          key={id}
          className="rail-button"
          {...(id === area && { 'aria-current': 'page' as const })}
          onPress={() => session.getState().goTo(id)}
        >
          <Icon size={22} aria-hidden="true" />
          {label}
        </Button>
      ))}
    </nav>
  );
}
