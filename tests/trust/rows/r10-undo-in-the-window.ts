import { playSequences } from '../../soak/undo/undo-robot';
import type { TrustRow } from '../row';

const SEQUENCES = 200;
const GESTURES = 50;
const SEED = 20_261_126;

/** `npm run soak -- R10 --seed=20261130`: a sequence that failed, alone. */
const one = process.env.LEADWRIGHT_SOAK_SEED;
/** Fewer of them, to see that it runs. */
const many = Number(process.env.LEADWRIGHT_UNDO_SEQUENCES ?? SEQUENCES);

export const ROWS: readonly TrustRow[] = [
  {
    id: 'R10',
    promise: `Any ${GESTURES} gestures in the window, by mouse and keys in all areas, are undone and redone to the byte, half of them opens from the disk as it was saved, and nothing goes wrong on the way`,
    target: { count: SEQUENCES, what: `random sequences of ${GESTURES} gestures in a browser` },
    long: true,
    run: async () => {
      const seeds = one === undefined ? Array.from({ length: many }, (_, at) => SEED + at) : [Number(one)];
      const tell = (words: string) => void process.stdout.write(`${words}\n`);
      const { sequences, gestures, steps, failures } = await playSequences(seeds, GESTURES, tell);
      tell(`${sequences} sequences, ${gestures} gestures, ${steps} steps`);
      return { tried: sequences, failures };
    },
  },
];
