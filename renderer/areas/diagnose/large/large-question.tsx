import { Button } from 'react-aria-components/Button';
import { Heading } from 'react-aria-components/Heading';
import { type ObservationId, observationNamed } from '../../../../boards/diagnosis/observations/observations';
import { LargePane } from './large-pane';

interface LargeQuestionProps {
  readonly id: ObservationId;
  readonly onAnswer: (said: 'yes' | 'no') => void;
  readonly onSkip: () => void;
  readonly onClose: () => void;
}

/** One question in large letters, with its three answers. */
export function LargeQuestion({ id, onAnswer, onSkip, onClose }: LargeQuestionProps) {
  const asked = observationNamed(id);
  return (
    <LargePane
      label="Question"
      doings={
        <>
          <Button className="button large-button" onPress={onClose}>
            Leave
          </Button>
          <Button className="button large-button" autoFocus onPress={onSkip}>
            S: cannot tell
          </Button>
          <Button className="button large-button large-onward" onPress={() => onAnswer('no')}>
            N: no
          </Button>
          <Button className="button large-button large-onward" onPress={() => onAnswer('yes')}>
            Y: yes
          </Button>
        </>
      }
    >
      <Heading slot="title" level={2} className="large-title">
        {asked?.question}
      </Heading>
      <p>{asked?.sign}</p>
    </LargePane>
  );
}
