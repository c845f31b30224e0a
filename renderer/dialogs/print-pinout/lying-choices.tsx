import { TURNS, type Turn } from '../../../boards/base/units';
import type { Build } from '../../../boards/document/build';
import { Choice } from '../../look/choice';
import { Tick } from '../../look/tick';

const TURN_LABELS: Readonly<Record<Turn, string>> = {
  0: 'As the sheet has it',
  90: 'A quarter clockwise',
  180: 'By half',
  270: 'A quarter against the clock',
};
const TURN_CHOICES = TURNS.map((turn) => ({ id: String(turn), label: TURN_LABELS[turn] }));

interface LyingChoicesProps {
  readonly lying: Build['view'];
  readonly onChoose: (lying: Build['view']) => void;
}

/** How the board lies on the page. */
export function LyingChoices({ lying, onChoose }: LyingChoicesProps) {
  return (
    <>
      <Choice
        label="Turned"
        options={TURN_CHOICES}
        chosen={String(lying.turn)}
        onChoose={(id) =>
          onChoose({ ...lying, turn: TURNS.find((turn) => String(turn) === id) ?? lying.turn })
        }
      />
      <Tick on={lying.mirrored} onChange={(mirrored) => onChoose({ ...lying, mirrored })}>
        Mirrored
      </Tick>
    </>
  );
}
