import { PAPER_FORMATS, type PaperFormat, SCALES } from '../../../boards/handover/order';
import { Choice } from '../../look/choice';
import { Tick } from '../../look/tick';

const FORMAT_LABELS: Readonly<Record<PaperFormat, string>> = {
  pdf: 'PDF, to print',
  svg: 'SVG, sharp at any size',
  png: 'PNG, a picture of pixels',
};

const SCALE_CHOICES = [1, 2, 3, 4].map((scale) => ({
  id: String(scale),
  label: `${96 * scale} pixels an inch`,
}));

/** As which file a paper is saved. */
export interface FileChoice {
  readonly format: PaperFormat;
  readonly scale: number;
  /** Only the page that is shown. */
  readonly onePage: boolean;
}

export function usualFile(format: PaperFormat): FileChoice {
  return { format, scale: SCALES.usual, onePage: false };
}

interface FileChoicesProps {
  readonly file: FileChoice;
  readonly onChoose: (file: FileChoice) => void;
  readonly formats?: readonly PaperFormat[];
  /** Whether there may be several pages. */
  readonly paged?: boolean;
}

/** The kind of file, how much of the paper is in it, and how large its pixels are. */
export function FileChoices({ file, onChoose, formats = PAPER_FORMATS, paged = true }: FileChoicesProps) {
  return (
    <>
      <Choice
        label="File"
        options={formats.map((id) => ({ id, label: FORMAT_LABELS[id] }))}
        chosen={file.format}
        onChoose={(format) => onChoose({ ...file, format })}
      />
      {paged && file.format !== 'pdf' && (
        <Tick on={file.onePage} onChange={(onePage) => onChoose({ ...file, onePage })}>
          Only the page that is shown
        </Tick>
      )}
      {file.format === 'png' && (
        <Choice
          label="Size"
          options={SCALE_CHOICES}
          chosen={String(file.scale)}
          onChoose={(id) => onChoose({ ...file, scale: Number(id) })}
        />
      )}
    </>
  );
}
