import { Button } from '../look/button';
import { keyed } from '../look/keyed';
import { Window } from '../look/window';
import type { Question } from '../store/dialog';

interface QuestionDialogProps {
  readonly question: Question;
  readonly answer: (choice: string | null) => void;
}

/** A question with its answers as buttons; stepping back is always one of them. */
export function QuestionDialog({ question, answer }: QuestionDialogProps) {
  const [first, ...others] = question.choices;
  return (
    <Window
      title={question.title}
      onClose={() => answer(null)}
      alert
      doings={
        <>
          <Button onPress={() => answer(null)}>Cancel</Button>
          {others.map(({ id, label }) => (
            <Button key={id} onPress={() => answer(id)}>
              {label}
            </Button>
          ))}
          {first && (
            <Button kind="main" onPress={() => answer(first.id)} autoFocus>
              {first.label}
            </Button>
          )}
        </>
      }
    >
      {keyed(question.lines).map(([key, line]) => (
        <p key={key}>{line}</p>
      ))}
    </Window>
  );
}
