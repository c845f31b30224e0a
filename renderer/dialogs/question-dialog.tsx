import { Button } from '../look/button';
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
      {question.lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </Window>
  );
}
