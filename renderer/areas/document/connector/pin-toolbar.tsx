import {
  CaretsToAxisDashedHorizontal,
  CaretsToAxisDashedVertical,
  ClipboardPaste,
  Copy,
  Eraser,
  PaintBucket,
  RotateCw,
} from 'lucide-react';
import { Toolbar } from 'react-aria-components/Toolbar';
import { shortcutWords } from '../../../actions/shortcut';
import { isMac } from '../../../actions/use-keys';
import { IconButton } from '../../../look/button';
import { counted } from '../../../words/list-words';
import { useBuild, useWorkbench } from '../../../workbench';
import { type ChosenPins, clearChosen, copyChosen, fillChosen, mirrorAll, pasteOn } from './pin-doings';

/** What can be done with the chosen pins, and with what is known of the whole header. */
export function PinToolbar({ chosen }: { readonly chosen: ChosenPins }) {
  const workbench = useWorkbench();
  const { view } = useBuild();
  const mac = isMac(workbench);
  const keys = (shortcut: string) => shortcutWords(shortcut, mac);
  const { size } = chosen.selection.chosen;
  const { tell } = workbench.session.getState();
  const copy = async () => {
    const text = copyChosen(workbench, chosen);
    if (text === undefined) return;
    await navigator.clipboard
      .writeText(text)
      .catch(() => tell(`The clipboard is closed to buttons here. Use ${keys('Mod+C')}.`));
  };
  const paste = async () => {
    const text = await navigator.clipboard.readText().catch(() => null);
    if (text === null) tell(`The clipboard is closed to buttons here. Use ${keys('Mod+V')}.`);
    else pasteOn(workbench, chosen, text);
  };
  return (
    <Toolbar className="pin-toolbar" aria-label="Chosen pins">
      <span className="pin-toolbar-count" role="status">
        {size === 0 ? 'No pin chosen' : `${counted(size, 'pin')} chosen`}
      </span>
      <IconButton
        label="Set the others like the first"
        keys={keys('Mod+D')}
        icon={<PaintBucket size={18} aria-hidden="true" />}
        disabled={size < 2}
        onPress={() => fillChosen(workbench, chosen)}
      />
      <IconButton
        label="Copy"
        keys={keys('Mod+C')}
        icon={<Copy size={18} aria-hidden="true" />}
        disabled={size === 0}
        onPress={() => void copy()}
      />
      <IconButton
        label="Paste"
        keys={keys('Mod+V')}
        icon={<ClipboardPaste size={18} aria-hidden="true" />}
        onPress={() => void paste()}
      />
      <IconButton
        label="Clear"
        keys={keys('Delete')}
        icon={<Eraser size={18} aria-hidden="true" />}
        disabled={size === 0}
        onPress={() => clearChosen(workbench, chosen)}
      />
      <span className="pin-toolbar-line" aria-hidden="true" />
      <IconButton
        label="Mirror what is known, left to right"
        icon={<CaretsToAxisDashedVertical size={18} aria-hidden="true" />}
        onPress={() => mirrorAll(workbench, chosen, view, 'left-right')}
      />
      <IconButton
        label="Mirror what is known, top to bottom"
        icon={<CaretsToAxisDashedHorizontal size={18} aria-hidden="true" />}
        onPress={() => mirrorAll(workbench, chosen, view, 'top-bottom')}
      />
      <IconButton
        label="Turn what is known by half"
        icon={<RotateCw size={18} aria-hidden="true" />}
        onPress={() => mirrorAll(workbench, chosen, view, 'half-turn')}
      />
    </Toolbar>
  );
}
