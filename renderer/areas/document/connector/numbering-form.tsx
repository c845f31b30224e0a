import type { Connector } from '../../../../boards/document/connector';
import { CORNERS, type Corner, type Numbering, SCHEMES } from '../../../../boards/document/grid';
import { doCommand } from '../../../do-command';
import { Choice } from '../../../look/choice';
import { useWorkbench } from '../../../workbench';

const SCHEME_WORDS = {
  'zig-zag': 'zig-zag',
  'by-row': 'row by row',
  'by-column': 'column by column',
  'u-shaped': 'out and back',
} as const satisfies Record<(typeof SCHEMES)[number], string>;

const CORNER_WORDS = {
  'top-left': 'top left',
  'top-right': 'top right',
  'bottom-left': 'bottom left',
  'bottom-right': 'bottom right',
} as const satisfies Record<Corner, string>;

const SCHEME_OPTIONS = SCHEMES.map((id) => ({ id, label: SCHEME_WORDS[id] }));
const CORNER_OPTIONS = CORNERS.map((id) => ({ id, label: CORNER_WORDS[id] }));

/** How the pins are counted. Free labels are kept as they are: they come with the connector. */
export function NumberingForm({ connector }: { readonly connector: Connector }) {
  const workbench = useWorkbench();
  const { numbering } = connector.grid;
  if (numbering.scheme === 'free')
    return <p className="soft small form-said">Pins have labels of their own.</p>;
  const number = (changed: Partial<Exclude<Numbering, { scheme: 'free' }>>) =>
    doCommand(workbench, {
      name: 'number-connector',
      args: { connector: connector.id, numbering: { ...numbering, ...changed } },
    });
  return (
    <>
      <Choice
        label="Counted"
        options={SCHEME_OPTIONS}
        chosen={numbering.scheme}
        onChoose={(scheme) => number({ scheme })}
      />
      <Choice
        label="Pin 1 at"
        options={CORNER_OPTIONS}
        chosen={numbering.from}
        onChoose={(from) => number({ from })}
      />
    </>
  );
}
