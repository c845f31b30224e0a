import { analyse } from '../../boards/analyse';
import type { Build } from '../../boards/document/build';
import { leadsOf, pinOf, seatOf, unitsOf } from '../../boards/document/lookup';
import { connectorName } from '../../boards/document/names';
import { gridIndex } from '../../boards/document/numbering';
import { pinWords } from '../../boards/document/pin-words';
import { type Finding, findingId } from '../../boards/findings/finding';
import { wordsOf } from '../../boards/findings/words';
import { goToBoard } from '../areas/wire/go-to-board';
import type { Selection } from '../store/session';
import { occupantWords } from '../words/occupant-words';
import { plugTitle, plugWords, shapeWords } from '../words/plug-words';
import { seatWords } from '../words/seat-words';
import { SEVERITY_WORDS } from '../words/severity-words';
import { onSocketWords, socketWords, unitWords } from '../words/unit-words';
import type { Workbench } from '../workbench';
import type { SearchEntry } from './search-list';

/** Everything on the bench that can be found by a word: leads, findings, connectors, pins. */
export function boardEntries(workbench: Workbench, build: Build): readonly SearchEntry[] {
  const goTo = (selection: Selection, connectors: readonly string[]) => () => {
    goToBoard(workbench, connectors);
    workbench.session.getState().select(selection);
  };
  return [
    ...leadEntries(build, goTo),
    ...analyse(build).findings.map((finding) => findingEntry(build, finding, goTo)),
    ...connectorEntries(build, goTo),
    ...unitEntries(workbench, build),
  ];
}

type GoTo = (selection: Selection, connectors: readonly string[]) => () => void;

function leadEntries(build: Build, goTo: GoTo): readonly SearchEntry[] {
  return leadsOf(build).flatMap((lead) =>
    lead.plugs.map((plug): SearchEntry => {
      const ref = { lead: lead.id, plug: plug.id };
      const seat = seatOf(build, ref);
      return {
        id: `lead ${lead.id} ${plug.id}`,
        title: plugTitle(lead, plug),
        words: `lead, ${seat ? `on ${seatWords(build, seat)}` : plugWords(lead, plug)}`,
        run: goTo({ kind: 'plug', plug: ref }, seat ? [seat.connector] : []),
      };
    }),
  );
}

function findingEntry(build: Build, finding: Finding, goTo: GoTo): SearchEntry {
  const { leads, pins } = finding;
  const id = findingId(finding);
  return {
    id: `finding ${id}`,
    title: wordsOf(finding, build).title,
    words: `finding, ${SEVERITY_WORDS[finding.severity].toLowerCase()}`,
    run: goTo({ kind: 'finding', id, leads, pins }, [...new Set(pins.map((pin) => pin.connector))]),
  };
}

/** Units and their connectors: the drawing shows the board alone, so each opens from near by. */
function unitEntries({ session }: Workbench, build: Build): readonly SearchEntry[] {
  return unitsOf(build).flatMap((unit) => [
    {
      id: `unit ${unit.id}`,
      title: unit.name,
      words: unitWords(unit),
      run: () => session.getState().openDialog({ kind: 'unit', unit: unit.id }),
    },
    ...unit.connectors.map(
      (connector): SearchEntry => ({
        id: `socket ${connector.id}`,
        title: connectorName(build, connector.id),
        words: `${socketWords(connector)}, ${onSocketWords(build, connector.id)}`,
        run: () => session.getState().openDialog({ kind: 'unit', unit: unit.id, connector: connector.id }),
      }),
    ),
  ]);
}

function connectorEntries(build: Build, goTo: GoTo): readonly SearchEntry[] {
  return build.board.connectors.flatMap((connector) => {
    const { id } = connector;
    const name = connectorName(build, id);
    return [
      {
        id: `connector ${id}`,
        title: name,
        words: `connector, ${connector.title}, ${shapeWords(connector)}`,
        run: goTo({ kind: 'connector', connector: id }, [id]),
      },
      ...gridIndex(connector.grid).positions.map(({ label }): SearchEntry => {
        const occupant = occupantWords(build, { connector: id, pin: label });
        return {
          id: `pin ${id} ${label}`,
          title: `${name}, pin\u00a0${label}`,
          words: `${pinWords(pinOf(connector, label))}${occupant === '' ? '' : `, ${occupant}`}`,
          run: goTo({ kind: 'connector', connector: id, pin: label }, [id]),
        };
      }),
    ];
  });
}
