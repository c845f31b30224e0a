import { RecentFiles } from '../files/recent-files';
import { Window } from '../look/window';

/** What was worked on last, while something else is open. */
export function RecentDialog({ onClose }: { readonly onClose: () => void }) {
  return (
    <Window title="Worked on last" onClose={onClose}>
      <RecentFiles empty="Nothing has been opened or saved yet." onOpen={onClose} />
    </Window>
  );
}
