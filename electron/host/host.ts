import { join } from 'node:path';
import { type Settings, SettingsZ } from '../../boards/host';
import type { PaperKit, ReadKitFile } from '../paper/kit';
import { appDataFolder, type Surroundings } from './app-data';
import { type Arrivals, makeArrivals } from './arrivals';
import { dayFrom } from './day';
import type { Door } from './door';
import type { FileSystem } from './file-system';
import { type Handles, makeHandles } from './handles';
import { type KeptFile, keptFile } from './kept-file';
import { type RecentFiles, recentFiles } from './recent-files';
import { openRecovery, type Recovery } from './recovery';
import { failureReports, type Reports } from './reports';
import { type SheetLibrary, sheetLibrary } from './sheet-library';
import { makeTurns, type Turns } from './turns';
import { makeUnderWay, type UnderWay } from './under-way';
import { fileVersions, type Versions } from './versions';

/** The machine behind a window: everything its calls reach. */
export interface Host {
  readonly fs: FileSystem;
  readonly door: Door;
  readonly version: string;
  readonly platform: string;
  readonly home: string;
  readonly handles: Handles;
  readonly saving: Turns;
  /** What the program does not end before. */
  readonly underWay: UnderWay;
  readonly recent: RecentFiles;
  readonly settings: KeptFile<Settings>;
  readonly library: SheetLibrary;
  readonly recovery: Recovery;
  /** Reports of failures of the program itself. */
  readonly reports: Reports;
  /** What files held before. */
  readonly versions: Versions;
  readonly arrivals: Arrivals;
  /** What paper is made with; opened when it is first wanted. */
  readonly paperKit: () => Promise<PaperKit>;
  /** The day that is printed on paper. */
  readonly today: () => Date;
}

export interface HostOptions {
  readonly fs: FileSystem;
  readonly door: Door;
  readonly version: string;
  readonly surroundings: Surroundings;
  /** Reads a file of the kit that paper is made with. */
  readonly readPaperFile: ReadKitFile;
  /** Files named at the start. */
  readonly toOpen: readonly string[];
}

const DEFAULT_SETTINGS: Settings = { theme: 'system', largeType: false };

export function openHost({ fs, door, version, surroundings, readPaperFile, toOpen }: HostOptions): Host {
  const data = appDataFolder(surroundings);
  let kit: Promise<PaperKit> | null = null;
  return {
    fs,
    door,
    version,
    arrivals: makeArrivals(toOpen),
    platform: surroundings.platform,
    home: surroundings.home,
    handles: makeHandles(),
    saving: makeTurns(),
    underWay: makeUnderWay(),
    recent: recentFiles(fs, data),
    settings: keptFile(fs, join(data, 'settings.json'), SettingsZ, DEFAULT_SETTINGS),
    library: sheetLibrary(fs, data),
    recovery: openRecovery(fs, join(data, 'recovery')),
    reports: failureReports(
      fs,
      join(data, 'reports'),
      { version, platform: surroundings.platform, door: door.kind },
      () => new Date(),
    ),
    versions: fileVersions(fs, join(data, 'versions')),
    paperKit: () => {
      // Only now: a program that prints nothing need not wait for what printing takes.
      kit ??= import('../paper/kit').then(({ openKit }) => openKit(readPaperFile));
      return kit;
    },
    today: () => dayFrom(new Date(), surroundings.env),
  };
}
