import { useEffect, useState } from 'react';
import { openDropped, openFirst } from '../files/open-document';
import { useWorkbench } from '../workbench';

function carriesFiles(event: DragEvent): boolean {
  return event.dataTransfer?.types.includes('Files') ?? false;
}

/** Takes files that are dropped anywhere on the window; says so while one hovers. */
export function DropTarget() {
  const workbench = useWorkbench();
  const [hovering, setHovering] = useState(false);
  useEffect(() => {
    const over = (event: DragEvent) => {
      if (!carriesFiles(event)) return;
      event.preventDefault();
      setHovering(true);
    };
    const leave = (event: DragEvent) => {
      if (event.relatedTarget === null) setHovering(false);
    };
    const drop = (event: DragEvent) => {
      if (!carriesFiles(event)) return;
      event.preventDefault();
      setHovering(false);
      void openFirst(workbench, [...(event.dataTransfer?.files ?? [])], openDropped);
    };
    window.addEventListener('dragover', over);
    window.addEventListener('dragleave', leave);
    window.addEventListener('drop', drop);
    return () => {
      window.removeEventListener('dragover', over);
      window.removeEventListener('dragleave', leave);
      window.removeEventListener('drop', drop);
    };
  }, [workbench]);
  return hovering ? <div className="drop-shade">Let go to open the file</div> : null;
}
