import { useMemo, useState } from 'react';
import { Checkbox } from 'react-aria-components/Checkbox';
import { CheckboxGroup } from 'react-aria-components/CheckboxGroup';
import { Label } from 'react-aria-components/Label';
import { serialize } from '../../../boards/document/serialize';
import { PART_TITLES } from '../../../boards/handover/bench-sheet/bench-words';
import { BENCH_PARTS, type BenchPart } from '../../../boards/handover/bench-sheet/options';
import type { Print } from '../../../boards/handover/order';
import { PAPER_IDS, PAPERS } from '../../../boards/handover/page/paper';
import { idFrom } from '../../files/file-name';
import { Choice } from '../../look/choice';
import { useBuild, useWorkbench } from '../../workbench';
import { FileChoices, usualFile } from './file-choices';
import { LyingChoices } from './lying-choices';
import { PageView } from './page-view';
import { PrintWindow } from './print-window';
import { savePaper } from './save-paper';
import { usePagePicture } from './use-page-picture';

const PAPER_CHOICES = PAPER_IDS.map((id) => ({ id, label: PAPERS[id].name }));

/** The bench sheet of the build as pages to print: which parts, how the board lies, and off. */
export function PrintBenchSheetDialog({ onClose }: { readonly onClose: () => void }) {
  const workbench = useWorkbench();
  const build = useBuild();
  const [lying, setLying] = useState(build.view);
  const [paper, setPaper] = useState<keyof typeof PAPERS>('a4');
  const [chosen, setChosen] = useState<readonly BenchPart[]>(BENCH_PARTS);
  const [file, setFile] = useState(usualFile('pdf'));
  const [asked, setAsked] = useState(1);
  const [writing, setWriting] = useState(false);

  const document = useMemo(() => serialize(build), [build]);
  const print = useMemo((): Print => {
    // Nothing chosen shows the whole, and cannot be saved.
    const parts = chosen.length === 0 ? BENCH_PARTS : chosen;
    return { kind: 'bench-sheet', options: { paper, ...lying, parts: [...parts] } };
  }, [chosen, paper, lying]);
  const change = (made: () => void) => {
    made();
    setAsked(1);
  };
  const picture = usePagePicture(document, print, asked);

  const save = async () => {
    const { format, scale } = file;
    const page = format !== 'pdf' && file.onePage ? asked : null;
    const name = `${idFrom(build.name, 'build')}-bench-sheet`;
    if (await savePaper(workbench, { document, print, format, page, scale }, name, setWriting)) onClose();
  };

  return (
    <PrintWindow
      title="Print the bench sheet"
      saveLabel={`Save as ${file.format.toUpperCase()}…`}
      onSave={() => void save()}
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
