import { useCallback, useMemo, useState } from 'react';
import { Checkbox } from 'react-aria-components/Checkbox';
import { CheckboxGroup } from 'react-aria-components/CheckboxGroup';
import { Label } from 'react-aria-components/Label';
import { PART_TITLES } from '../../../boards/handover/bench-sheet/bench-words';
import { BENCH_PARTS, type BenchPart } from '../../../boards/handover/bench-sheet/options';
import type { Print } from '../../../boards/handover/order';
import { idFrom } from '../../files/file-name';
import { useBuild } from '../../workbench';
import { LyingChoices } from './lying-choices';
import { PaperDialog, type PaperSize } from './paper-dialog';

/** The bench sheet of the build as pages to print: which parts, how the board lies, and off. */
export function PrintBenchSheetDialog({ onClose }: { readonly onClose: () => void }) {
  const build = useBuild();
  const [lying, setLying] = useState(build.view);
  const [chosen, setChosen] = useState<readonly BenchPart[]>(BENCH_PARTS);
  const document = useMemo(() => JSON.stringify(build), [build]);
  const printOn = useCallback(
    (paper: PaperSize): Print => {
      // Nothing chosen shows the whole, and cannot be saved.
      const parts = chosen.length === 0 ? BENCH_PARTS : chosen;
      return { kind: 'bench-sheet', options: { paper, ...lying, parts: [...parts] } };
    },
    [chosen, lying],
  );
  return (
    <PaperDialog
      of="the bench sheet"
      document={document}
      printOn={printOn}
      name={`${idFrom(build.name, 'build')}-bench-sheet`}
      missing={chosen.length === 0 ? 'Choose at least one part.' : undefined}
      onClose={onClose}
    >
      <LyingChoices lying={lying} onChoose={setLying} />
      <CheckboxGroup
        className="print-parts"
        value={[...chosen]}
        onChange={(ids) => setChosen(BENCH_PARTS.filter((part) => ids.includes(part)))}
      >
        <Label className="field-label">Parts</Label>
        {BENCH_PARTS.map((part) => (
          <Checkbox key={part} value={part} className="check">
            <span className="check-box" aria-hidden="true" />
            {PART_TITLES[part]}
          </Checkbox>
        ))}
      </CheckboxGroup>
    </PaperDialog>
  );
}
