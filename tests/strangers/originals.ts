import fc from 'fast-check';
import type { BoardSheet } from '../../boards/document/board-sheet';
import { serialize } from '../../boards/document/serialize';
import { encodeCopy } from '../../electron/host/recovery-copy';
import { layoutOf } from '../../renderer/areas/document/connector/header-layout';
import { copiedText } from '../../renderer/areas/document/connector/pin-clipboard';
import { arbitraryBoard, arbitraryBuild, arbitraryCase } from '../boards/arbitrary-build';
import { jpegHead, plainPixels, pngOf, webpHead } from '../boards/pinout/photo/picture-files';

/** Every kind of thing that comes from outside and is read. */
export const KINDS = [
  'build',
  'board',
  'case',
  'photo',
  'pin list',
  'copied pins',
  'recovery copy',
  'settings',
  'recent files',
] as const;
export type Kind = (typeof KINDS)[number];

/** Texts of documents, by their kind. */
export type FrozenTexts = Readonly<Record<'build' | 'board' | 'case', readonly string[]>>;
export type SoundFiles = Readonly<Record<Kind, readonly Uint8Array[]>>;

const MANY = 40;
const SEED = 20_261_126;

const sampled = <T>(arbitrary: fc.Arbitrary<T>) => fc.sample(arbitrary, { seed: SEED, numRuns: MANY });
const bytesOf = (text: string) => new TextEncoder().encode(text);

/**
 * Sound files of every kind, to be damaged: those that the generators of the property tests make, and
 * frozen ones that hold every field there is.
 *
 * @param frozen texts of documents, by their kind
 */
export function originals(frozen: FrozenTexts): SoundFiles {
  const boards = sampled(arbitraryBoard);
  const builds = sampled(arbitraryBuild).map(serialize);
  // As often as all the generated ones together: they alone hold every field.
  const often = (texts: readonly string[]) => texts.flatMap((text) => Array<string>(6).fill(text));
  return {
    build: [...builds, ...often(frozen.build)].map(bytesOf),
    board: [...boards.map(serialize), ...often(frozen.board)].map(bytesOf),
    case: [...sampled(arbitraryCase).map(serialize), ...often(frozen.case)].map(bytesOf),
    photo: [
      pngOf(plainPixels(40, 30)),
      pngOf(plainPixels(16, 16)),
      jpegHead(4_000, 3_000),
      jpegHead(640, 480, 6),
      webpHead(640, 480),
      webpHead(16_384, 16),
    ],
    'pin list': PIN_LISTS.map(bytesOf),
    'copied pins': boards.flatMap(copiedFrom).map(bytesOf),
    'recovery copy': builds.slice(0, 10).map((text, at) => bytesOf(encodeCopy(noteOf(at), text))),
    settings: [
      '{"theme":"dark","largeType":true}\n',
      '{\n  "theme": "system",\n  "largeType": false\n}\n',
    ].map(bytesOf),
    'recent files': ['["/home/a/desk.build.json","/home/a/attic.build.json"]\n', '[]\n'].map(bytesOf),
  };
}

function copiedFrom({ connectors }: BoardSheet): readonly string[] {
  return connectors
    .filter(({ pins }) => pins.length > 0)
    .map((connector) => {
      const layout = layoutOf(connector, { turn: 0, mirrored: false });
      return copiedText(
        connector,
        layout,
        connector.pins.map(({ pin }) => pin),
      );
    });
}

function noteOf(at: number) {
  return {
    owner: { pid: 1 + at, started: 'then' },
    path: at % 2 === 0 ? null : `/home/a/${at}.build.json`,
    stamp: at % 2 === 0 ? null : 'a-stamp',
    name: `Bench ${at}`,
    serial: 1,
    savedMs: 1_000 * at,
    changes: at,
  };
}

/** As they stand in manuals: numbered lines, tables, ranges, both columns, words alone. */
const PIN_LISTS = [
  '1 HDD LED+\n2 PWR LED+\n3 HDD LED-\n4 PWR LED-\n5 RESET-\n6 PWR BTN#\n7 RESET+\n8 GND\n9 +5V\n10 KEY\n',
  'Pin\tSignal\tPin\tSignal\n1\t+5V\t2\t+5V\n3\tUSB1 D-\t4\tUSB2 D-\n5\tUSB1 D+\t6\tUSB2 D+\n7\tGND\t8\tGND\n9\tKEY\t10\tNC\n',
  '| 1 | GND |\n| 2 | +12V |\n| 3 | SENSE |\n| 4 | CONTROL |\n',
  'PLED+ | PLED- | PWR | GND | HDLED+ | HDLED- | RST | GND\n',
  '1-4 NC\n5, 7: GND\n6 = 5VSB (wake)\n8 – no pin\n',
  'MIC2_L GND\nMIC2_R PRESENCE#\nLINE2_R SENSE1\nSENSE_SEND KEY\nLINE2_L SENSE2\n',
];
