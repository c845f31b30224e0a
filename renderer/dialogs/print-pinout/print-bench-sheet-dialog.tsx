import { useMemo, useState } from 'react';
import { Checkbox } from 'react-aria-components/Checkbox';
import { CheckboxGroup } from 'react-aria-components/CheckboxGroup';
import { Label } from 'react-aria-components/Label';
import { serialize } from '../../../boards/document/serialize';
import { PART_TITLES } from '../../../boards/handover/bench-sheet/bench-words';
import { BENCH_PARTS, type BenchPart } from '../../../boards/handover/bench-sheet/options';
import type { Print } from '../../../boards/handover/order';
import { PAPERS } from '../../../boards/handover/page/paper';
import { idFrom } from '../../files/file-name';
import { Choice } from '../../look/choice';
import { useBuild } from '../../workbench';
import { FileChoices } from './file-choices';
import { LyingChoices } from './lying-choices';
import { PageView } from './page-view';
import { PrintWindow } from './print-window';
import { usePagePicture } from './use-page-picture';
import { PAPER_CHOICES, usePrinting } from './use-printing';

/** The bench sheet of the build as pages to print: which parts, how the board lies, and off. */
export function PrintBenchSheetDialog({ onClose }: { readonly onClose: () => void }) {
  const build = useBuild();
  const { lying, setLying, paper, setPaper, file, setFile, asked, setAsked, writing, change, save } =
    usePrinting(build.view, onClose);
  const [chosen, setChosen] = useState<readonly BenchPart[]>(BENCH_PARTS);

  const document = useMemo(() => serialize(build), [build]);
  const print = useMemo((): Print => {
    // Nothing chosen shows the whole, and cannot be saved.
    const parts = chosen.length === 0 ? BENCH_PARTS : chosen;
    return { kind: 'bench-sheet', options: { paper, ...lying, parts: [...parts] } };
  }, [chosen, paper, lying]);
  const picture = usePagePicture(document, print, asked);

  return (
    <PrintWindow
      title="Print the bench sheet"
      saveLabel={`Save as ${file.format.toUpperCase()}…`}
      onSave={() => void save(document, print, `${idFrom(build.name, 'build')}-bench-sheet`)}
      onClose={onClose}
      writing={writing}
      missing={chosen.length === 0 ? 'Choose at least one part.' : undefined}
      broken={picture.problem !== null}
    >
      <div className="print-choices">
        <Choice
          label="Paper"
          options={PAPER_CHOICES}
          chosen={paper}
          onChoose={(id) => change(() => setPaper(id))}
        />
        <LyingChoices lying={lying} onChoose={(lies) => change(() => setLying(lies))} />
        <CheckboxGroup
          className="print-parts"
          value={[...chosen]}
          onChange={(ids) => change(() => setChosen(BENCH_PARTS.filter((part) => ids.includes(part))))}
        >
          <Label className="field-label">Parts</Label>
          {BENCH_PARTS.map((part) => (
            <Checkbox key={part} value={part} className="check">
              <span className="check-box" aria-hidden="true" />
              {PART_TITLES[part]}
            </Checkbox>
          ))}
        </CheckboxGroup>
        <FileChoices file={file} onChoose={setFile} />
      </div>
      <PageView
        picture={picture}
        shape={PAPERS[paper]}
        of="the bench sheet"
        page={asked}
        onTurnTo={setAsked}
      />
    </PrintWindow>
  );
}
