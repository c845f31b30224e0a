import { Button } from '../look/button';
import { keyed } from '../look/keyed';
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
          {keyed(message.lines).map(([key, line]) => (
            <li key={key}>{line}</li>
          ))}
        </ul>
      ) : (
        keyed(message.lines).map(([key, line]) => <p key={key}>{line}</p>)
      )}
      <p>{message.advice}</p>
    </Window>
  );
}
