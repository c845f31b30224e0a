import { useMemo } from 'react';
import type { Build, Seat } from '../../boards/document/build';
import type { PlugRef } from '../../boards/document/lookup';
import { placesOf } from '../../boards/fit/places';
import { properSeats } from '../../boards/fit/proper-seats';
import { plugTitleOf, seatAt } from '../areas/wire/placing/hand';
import { Window } from '../look/window';
import { counted } from '../words/list-words';
import { meetingWords, seatTurnWords, seatWords } from '../words/seat-words';
import { useBuild, useWorkbench } from '../workbench';
import { type SearchEntry, SearchList } from './search-list';

interface PlacesDialogProps {
  readonly plug: PlugRef;
  readonly onClose: () => void;
}

/** Every place where a plug fits, in words, the right ones first. Choosing one seats it. */
export function PlacesDialog({ plug, onClose }: PlacesDialogProps) {
  const workbench = useWorkbench();
  const build = useBuild();
  const places = useMemo(() => rankedPlaces(build, plug), [build, plug]);
  const entries = places.map(({ seat, right }): SearchEntry => {
    const turn = seatTurnWords(build, seat);
    return {
      id: seatKey(seat),
      title: `${seatWords(build, seat)}${turn === '' ? '' : `, ${turn}`}`,
      words: meetingWords(build, seat),
      end: right ? 'right place' : undefined,
      run: () => {
        onClose();
        if (seatAt(workbench, seat)) workbench.canvas.current?.show([seat.connector]);
      },
    };
  });
  const right = places.filter((place) => place.right).length;
  return (
    <Window title={`Places for ${plugTitleOf(build, plug)}`} onClose={onClose}>
      <p className="soft small">
        It fits in {counted(places.length, 'place')}; {right === 0 ? 'none is' : counted(right, 'is', 'are')}{' '}
        made for it.
      </p>
      <SearchList
        label="Search places"
        placeholder="Connector, pin or signal"
        entries={entries}
        empty="It fits nowhere like this on the board as it is now."
      />
    </Window>
  );
}

interface Place {
  readonly seat: Seat;
  readonly right: boolean;
}

function rankedPlaces(build: Build, plug: PlugRef): readonly Place[] {
  const right = properSeats(build, plug);
  const known = new Set(right.map(seatKey));
  const others = placesOf(build, plug).filter((seat) => !known.has(seatKey(seat)));
  return [...right.map((seat) => ({ seat, right: true })), ...others.map((seat) => ({ seat, right: false }))];
}

function seatKey({ connector, at, turn }: Seat): string {
  return `${connector} ${at[0]} ${at[1]} ${turn}`;
}
