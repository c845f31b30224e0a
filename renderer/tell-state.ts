import { isUnsaved } from './store/editor';
import type { Workbench } from './workbench';

/** Keeps the machine and the title bar up to date about what is open and whether it is saved. */
export function tellState({ host, about, editor }: Workbench): void {
  let told = '';
  const tell = () => {
    const { open } = editor.getState();
    const name = open?.history.present.name ?? '';
    const unsaved = open !== null && isUnsaved(open);
    const title = `${unsaved ? '• ' : ''}${name === '' ? '' : `${name} – `}Leadwright`;
    if (title === told) return;
    told = title;
    document.title = title;
    // A machine that is gone has no title bar; whoever needs it for more than words will say that it is.
    void host.showState({ name, unsaved }).catch(() => undefined);
  };
  tell();
  editor.subscribe(tell);
  if (about.door === 'electron') return;
  window.addEventListener('beforeunload', (event) => {
    const { open } = editor.getState();
    if (open !== null && isUnsaved(open)) event.preventDefault();
  });
}
