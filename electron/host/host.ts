import { join } from 'node:path';
import { type Settings, SettingsZ } from '../../boards/host';
import { appDataFolder, type Surroundings } from './app-data';
import { type Arrivals, makeArrivals } from './arrivals';
import type { Door } from './door';
import type { FileSystem } from './file-system';
import { type Handles, makeHandles } from './handles';
import { type KeptFile, keptFile } from './kept-file';
import { type RecentFiles, recentFiles } from './recent-files';
import { openRecovery, type Recovery } from './recovery';
import { type SheetLibrary, sheetLibrary } from './sheet-library';
import { makeTurns, type Turns } from './turns';

/** The machine behind a window: everything its calls reach. */
export interface Host {
  readonly fs: FileSystem;
  readonly door: Door;
  readonly version: string;
  readonly platform: string;
  readonly home: string;
  readonly handles: Handles;
  readonly saving: Turns;
  readonly recent: RecentFiles;
  readonly settings: KeptFile<Settings>;
  readonly library: SheetLibrary;
  readonly recovery: Recovery;
  readonly arrivals: Arrivals;
}

export interface HostOptions {
  readonly fs: FileSystem;
  readonly door: Door;
  readonly version: string;
  readonly surroundings: Surroundings;
  /** Files named at the start. */
  readonly toOpen: readonly string[];
}

const DEFAULT_SETTINGS: Settings = { theme: 'system', largeType: false };

export function openHost({ fs, door, version, surroundings, toOpen }: HostOptions): Host {
  const data = appDataFolder(surroundings);
  return {
    fs,
    door,
    version,
    arrivals: makeArrivals(toOpen),
    platform: surroundings.platform,
    home: surroundings.home,
    handles: makeHandles(),
    saving: makeTurns(),
    recent: recentFiles(fs, data),
    settings: keptFile(fs, join(data, 'settings.json'), SettingsZ, DEFAULT_SETTINGS),
    library: sheetLibrary(fs, data),
    recovery: openRecovery(fs, join(data, 'recovery')),
  };
}
