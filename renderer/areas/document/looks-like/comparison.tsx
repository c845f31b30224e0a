import { useState } from 'react';
import type { Connector } from '../../../../boards/document/connector';
import { cautionWords, orientationWords } from '../../../../boards/pinout/looks-like/looks-like-words';
import { HeaderDrawing } from './header-drawing';
import { PlacesTable } from './places-table';
import type { Candidate } from './use-candidates';

interface ComparisonProps {
  readonly connector: Connector;
  readonly candidate: Candidate;
}

/** A connector beside one known layout as it lies here: both drawn, then pin by pin. */
export function Comparison({ connector, candidate: { likeness, places } }: ComparisonProps) {
  const [pointed, setPointed] = useState<string | null>(null);
  const { title } = likeness.layout.connector;
  const cautions = cautionWords(connector, likeness);
  const name = connector.print || connector.title;
  return (
    <section className="looks-like-comparison" aria-label={`${name} beside ${title}`}>
      <div className="header-pair">
        <HeaderDrawing caption={`${name}, as you have it`} places={places} side="here" pointed={pointed} />
        <HeaderDrawing
          caption={`${title}, ${orientationWords(likeness.orientation)}`}
          places={places}
          side="there"
          pointed={pointed}
        />
      </div>
      {cautions.length > 0 && <p className="small">{cautions.join(' ')}</p>}
      <PlacesTable
        label={`${name} and ${title}, pin by pin`}
        places={places}
        pointed={pointed}
        onPoint={setPointed}
      />
    </section>
  );
}
