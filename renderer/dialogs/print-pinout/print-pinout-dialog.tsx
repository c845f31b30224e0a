import { useCallback, useMemo, useState } from 'react';
import type { Print } from '../../../boards/handover/order';
import { idFrom } from '../../files/file-name';
import { useBuild } from '../../workbench';
import { ConnectorList } from './connector-list';
import { LyingChoices } from './lying-choices';
import { PaperDialog, type PaperSize } from './paper-dialog';

/** The pinout of the board as pages to print: how they lie, which connectors, what they look like, and off. */
export function PrintPinoutDialog({ onClose }: { readonly onClose: () => void }) {
  const { board, view } = useBuild();
  // As the board lies in the Wire area: that is how it lies before the person.
  const [lying, setLying] = useState(view);
  const [chosen, setChosen] = useState<ReadonlySet<string>>(
    () => new Set(board.connectors.map(({ id }) => id)),
  );
  const document = useMemo(() => JSON.stringify(board), [board]);
  const printOn = useCallback(
    (paper: PaperSize): Print => {
      const ids = board.connectors.map(({ id }) => id).filter((id) => chosen.has(id));
      // Nothing chosen shows the first page alone, and cannot be saved.
      const connectors = ids.length === board.connectors.length || ids.length === 0 ? null : ids;
      return { kind: 'pinout', options: { paper, ...lying, connectors } };
    },
    [board, chosen, lying],
  );
  const nothing = chosen.size === 0 && board.connectors.length > 0;
  return (
    <PaperDialog
      of="the pinout"
      document={document}
      printOn={printOn}
      name={`${idFrom(board.name, 'board')}-pinout`}
      missing={nothing ? 'Choose at least one connector.' : undefined}
      onClose={onClose}
    >
      <LyingChoices lying={lying} onChoose={setLying} />
      <ConnectorList connectors={board.connectors} chosen={chosen} onChoose={setChosen} />
    </PaperDialog>
  );
}
