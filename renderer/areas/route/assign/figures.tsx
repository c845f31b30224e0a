import { useState } from 'react';
import { SearchChoice } from '../../../look/search-choice';
import { useBuild } from '../../../workbench';
import { ConnectorFigures } from './connector-figures';
import { DriveFigures } from './drive-figures';
import { DrivePlaces } from './drive-places';
import { FanFigures } from './fan-figures';
import { figureEntries } from './figure-entries';
import { HubFigures } from './hub-figures';

/** What the manual says of headers and ports, and labels of fans, drives and hubs, one at a time. */
export function Figures() {
  const build = useBuild();
  const [id, setId] = useState<string | null>(null);
  const entries = figureEntries(build);
  const entry = entries.find((each) => each.id === id);
  return (
    <details className="assign-details">
      <summary>Figures of manuals and labels</summary>
      <div>
        <SearchChoice
          label="Of what"
          placeholder="a header, port, fan, drive or hub"
          entries={entries}
          chosen={id}
          onChoose={setId}
        />
        {entry?.subject.kind === 'fan' && <FanFigures key={entry.id} {...entry.subject} />}
        {(entry?.subject.kind === 'header' || entry?.subject.kind === 'port') && (
          <ConnectorFigures key={entry.id} {...entry.subject} />
        )}
        {entry?.subject.kind === 'drive' && <DriveFigures key={entry.id} {...entry.subject} />}
        {entry?.subject.kind === 'hub' && <HubFigures key={entry.id} {...entry.subject} />}
        <DrivePlaces />
      </div>
    </details>
  );
}
