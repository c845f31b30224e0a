import type { SignalId } from '../../signals/signals';

/**
 * What panel headers are put together from. Positions of a block lie along the header; a pair may also lie
 * across it. Weights are odds, common practice, no source; the pairs and their order are those of the panel
 * connectors in the library.
 */
export interface Block {
  /** Blocks of one job stand at most once on a header. */
  readonly job: number;
  /** Along the header. "gap": no post, or one that leads nowhere. */
  readonly signals: readonly (SignalId | 'gap')[];
  readonly odds: number;
}

interface Job {
  /** How often a panel header has it. */
  readonly share: number;
  readonly forms: readonly (readonly [odds: number, ...signals: (SignalId | 'gap')[]])[];
}

const JOBS: readonly Job[] = [
  {
    share: 0.95,
    forms: [
      [0.5, 'power-switch-input', 'ground'],
      [0.5, 'ground', 'power-switch-input'],
    ],
  },
  {
    share: 0.9,
    forms: [
      [0.5, 'reset-switch-input', 'ground'],
      [0.5, 'ground', 'reset-switch-input'],
    ],
  },
  {
    share: 0.9,
    forms: [
      [0.6, 'drive-led-feed', 'drive-led-sink'],
      [0.3, 'drive-led-sink', 'drive-led-feed'],
      [0.07, 'drive-led-feed', 'gap', 'drive-led-sink'],
      [0.03, 'drive-led-sink', 'gap', 'drive-led-feed'],
    ],
  },
  {
    share: 0.9,
    forms: [
      [0.5, 'power-led-feed', 'power-led-sink'],
      [0.2, 'power-led-sink', 'power-led-feed'],
      [0.2, 'power-led-feed', 'gap', 'power-led-sink'],
      [0.1, 'power-led-sink', 'gap', 'power-led-feed'],
    ],
  },
  {
    share: 0.35,
    forms: [
      [0.35, 'speaker-feed', 'gap', 'gap', 'speaker-drive'],
      [0.25, 'speaker-drive', 'gap', 'gap', 'speaker-feed'],
      [0.25, 'speaker-feed', 'ground', 'gap', 'speaker-drive'],
      [0.15, 'speaker-drive', 'gap', 'ground', 'speaker-feed'],
    ],
  },
  {
    share: 0.1,
    forms: [
      [0.5, 'message-led-feed', 'message-led-sink'],
      [0.25, 'message-led-sink', 'message-led-feed'],
      [0.15, 'message-led-feed', 'gap', 'message-led-sink'],
      [0.1, 'message-led-sink', 'gap', 'message-led-feed'],
    ],
  },
  {
    share: 0.08,
    forms: [
      [0.5, 'key-lock-input', 'ground'],
      [0.5, 'ground', 'key-lock-input'],
    ],
  },
];

export const PANEL_JOBS = JOBS.length;

export const BLOCKS: readonly Block[] = JOBS.flatMap(({ share, forms }, job) =>
  forms.map(([odds, ...signals]) => ({ job, signals, odds: (odds * share) / (1 - share) })),
);

/** Posts that stand alone: what they are, and the odds of one more of them. */
export const ALONE: readonly (readonly [signal: SignalId, odds: number])[] = [
  ['reserved', 0.1],
  ['supply-5v', 0.05],
  ['ground', 0.05],
  ['supply-5v-standby', 0.02],
];

/** How often a pair lies across the header, where it has two rows. */
export const ACROSS_SHARE = 0.4;
