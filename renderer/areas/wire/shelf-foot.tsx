import { Route } from 'lucide-react';
import { useEffect, useRef } from 'react';
import { useAction } from '../../actions/actions';
import { Button } from '../../look/button';
import { useSession } from '../../workbench';

/** What can be done with all leads at once. Takes the focus back when the best seating is closed. */
export function ShelfFoot() {
  const { label, enabled, run } = useAction('board.best-seating');
  const open = useSession(({ seatingOpen }) => seatingOpen);
  const foot = useRef<HTMLDivElement>(null);
  const openBefore = useRef(open);
  useEffect(() => {
    const closed = openBefore.current && !open;
    openBefore.current = open;
    if (closed && document.activeElement === document.body) foot.current?.querySelector('button')?.focus();
  }, [open]);
  return (
    <div ref={foot} className="shelf-foot">
      <Button disabled={!enabled} onPress={() => run()}>
        <Route size={16} aria-hidden="true" />
        {label}
      </Button>
    </div>
  );
}
