import { Trash2 } from 'lucide-react';
import type { Connector } from '../../../../boards/document/connector';
import type { PinReading } from '../../../../boards/document/pin-reading';
import type { Identification } from '../../../../boards/pinout/meter/identification';
import { contradictionWords, questionName, shownWords } from '../../../../boards/pinout/meter/words';
import { doCommand } from '../../../do-command';
import { IconButton } from '../../../look/button';
import { SeveritySign } from '../../../look/severity-sign';
import { useWorkbench } from '../../../workbench';

interface ReadingListProps {
  readonly connector: Connector;
  /** null while it is not known what contradicts what. */
  readonly found: Identification | null;
}

/** What was noted, the newest first, and which of it cannot be true together. */
export function ReadingList({ connector, found }: ReadingListProps) {
  const workbench = useWorkbench();
  const { readings = [] } = connector;
  if (readings.length === 0) return <p className="soft">Nothing was measured on this connector yet.</p>;
  const contradictions = found?.contradictions ?? [];
  const contradicting = new Set(contradictions.flatMap(({ readings: places }) => places));
  const suspect = suspectOf(found, readings);
  return (
    <>
      {contradictions.length > 0 && (
        <ul className="meter-contradictions" aria-label="Readings that contradict each other">
          {contradictions.map((one) => (
            <li key={one.readings.join(' ')} className="list-problem">
              <SeveritySign severity="fault" spoken />
              <span>{contradictionWords(one, readings)}</span>
            </li>
          ))}
          {suspect !== '' && <li className="small">{suspect}</li>}
        </ul>
      )}
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
    </>
  );
}

/** Which single reading, if it was wrong, would let the others agree. */
function suspectOf(found: Identification | null, readings: readonly PinReading[]): string {
  const single = (found?.suspects ?? []).filter((set) => set.length === 1).flatMap((set) => set[0] ?? []);
  const [only] = single;
  const reading = only === undefined ? undefined : readings[only];
  if (single.length !== 1 || reading === undefined || found?.contradictions.length === 1) return '';
  return `If only this one was misread, the others agree: ${questionName(reading)}. Measure it again first.`;
}

function toleranceWords(reading: PinReading): string {
  if (!('tolerance' in reading) || reading.tolerance === undefined) return '';
  return `, within ${Number((reading.tolerance * 100).toPrecision(2))}\u00a0%`;
}
