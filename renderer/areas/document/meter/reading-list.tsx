import { Trash2 } from 'lucide-react';
import type { Connector } from '../../../../boards/document/connector';
import type { PinReading } from '../../../../boards/document/pin-reading';
import type { Identification } from '../../../../boards/pinout/meter/identification';
import { questionName, shownWords } from '../../../../boards/pinout/meter/words';
import { doCommand } from '../../../do-command';
import { IconButton } from '../../../look/button';
import { toleranceFigures } from '../../../words/reading-words';
import { useWorkbench } from '../../../workbench';

interface ReadingListProps {
  readonly connector: Connector;
  /** null while it is not known what contradicts what. */
  readonly found: Identification | null;
}

/** What was noted, the newest first; what is contradicted is marked. */
export function ReadingList({ connector, found }: ReadingListProps) {
  const workbench = useWorkbench();
  const { readings = [] } = connector;
  if (readings.length === 0) return <p className="soft">Nothing was measured on this connector yet.</p>;
  const contradicting = new Set(found?.contradictions.flatMap(({ readings: places }) => places));
  return (
    <ol className="reading-list" aria-label="Readings" reversed>
      {readings
        .map((reading, at) => ({ reading, at }))
        .reverse()
        .map(({ reading, at }) => (
          <li key={at} className="reading-row" data-contradicting={contradicting.has(at) || undefined}>
            <span className="mono soft">{at + 1}</span>
            <span className="reading-words">
              {questionName(reading)}: <strong>{shownWords(reading)}</strong>
              {toleranceWords(reading)}
              {contradicting.has(at) && <span className="reading-mark">contradicted</span>}
            </span>
            <IconButton
              label={`Drop reading ${at + 1}`}
              icon={<Trash2 size={16} aria-hidden="true" />}
              onPress={() =>
                doCommand(workbench, {
                  name: 'drop-reading',
                  args: { connector: connector.id, reading: at },
                })
              }
            />
          </li>
        ))}
    </ol>
  );
}

function toleranceWords(reading: PinReading): string {
  if (!('tolerance' in reading) || reading.tolerance === undefined) return '';
  return `, within ${toleranceFigures(reading.tolerance)}\u00a0%`;
}
