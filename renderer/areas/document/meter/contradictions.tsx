import type { Connector } from '../../../../boards/document/connector';
import type { PinReading } from '../../../../boards/document/pin-reading';
import type { Identification } from '../../../../boards/pinout/meter/identification';
import { contradictionWords, questionName } from '../../../../boards/pinout/meter/words';
import { SeveritySign } from '../../../look/severity-sign';

interface ContradictionsProps {
  readonly connector: Connector;
  /** null while it is not known what contradicts what. */
  readonly found: Identification | null;
}

/** Readings that cannot be true together, and which one to measure again first where that is known. */
export function Contradictions({ connector, found }: ContradictionsProps) {
  const { readings = [] } = connector;
  if (found === null || found.contradictions.length === 0) return null;
  const suspect = suspectOf(found, readings);
  return (
    <div className="meter-contradicted" role="status">
      <ul className="meter-contradictions" aria-label="Readings that contradict each other">
        {found.contradictions.map((one) => (
          <li key={one.readings.join(' ')} className="meter-contradiction">
            <SeveritySign severity="fault" spoken />
            <span>{contradictionWords(one, readings)}</span>
          </li>
        ))}
      </ul>
      {suspect !== undefined && (
        <p className="small">
          {`If only this one was misread, the others agree: ${questionName(suspect)}. Measure it again first.`}
        </p>
      )}
    </div>
  );
}

/** The one reading that all contradictions share, where there are several of them. */
function suspectOf(
  { contradictions, suspects }: Identification,
  readings: readonly PinReading[],
): PinReading | undefined {
  const single = suspects.filter(({ length }) => length === 1).flat();
  const [only] = single;
  return contradictions.length > 1 && single.length === 1 && only !== undefined ? readings[only] : undefined;
}
