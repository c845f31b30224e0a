import { Button } from 'react-aria-components/Button';
import { Heading } from 'react-aria-components/Heading';
import type { Stop } from '../../../../boards/diagnosis/trials/held-back';
import { stopWords } from '../../../../boards/diagnosis/trials/words';
import { SeveritySign } from '../../../look/severity-sign';
import { LargePane } from './large-pane';

interface LargeStopProps {
  readonly stops: readonly Stop[];
  readonly onClose: () => void;
}

/** What to do at once, in large letters. */
export function LargeStop({ stops, onClose }: LargeStopProps) {
  const [first, ...more] = stopWords(stops);
  return (
    <LargePane
      label="Stop"
      stop
      doings={
        <Button className="button large-button large-onward" autoFocus onPress={onClose}>
          Leave
        </Button>
      }
    >
      <div className="large-stop-first">
        <SeveritySign severity="danger" spoken />
        <Heading slot="title" level={2} className="large-title">
          {first}
        </Heading>
      </div>
      {more.map((line) => (
        <p key={line} className="large-warning">
          {line}
        </p>
      ))}
    </LargePane>
  );
}
