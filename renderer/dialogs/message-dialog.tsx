import { Button } from '../look/button';
import { Window } from '../look/window';
import type { Message } from '../store/dialog';

/** What did not work: what, the particulars, what to do. */
export function MessageDialog({
  message,
  onClose,
}: {
  readonly message: Message;
  readonly onClose: () => void;
}) {
  return (
    <Window
      title={message.title}
      onClose={onClose}
      alert
      doings={
        <Button kind="main" onPress={onClose} autoFocus>
          Close
        </Button>
      }
    >
      {message.lines.length > 3 ? (
        <ul className="message-lines">
          {message.lines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      ) : (
        message.lines.map((line) => <p key={line}>{line}</p>)
      )}
      <p>{message.advice}</p>
    </Window>
  );
}
