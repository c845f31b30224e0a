import type { Build } from '../../../boards/document/build';
import type { Block } from '../../../boards/drawing/block';
import type { Rect } from '../../../boards/drawing/geometry';
import type { HoleShape } from '../../../boards/drawing/holes';
import type { Orientation } from '../../../boards/drawing/orientation';
import type { PlugShape } from '../../../boards/drawing/plug-shape';
import type { TitleShape } from './titles';
import type { FlagShape, SleeveShape, WireShape } from './wiring';

/** The whole drawing as plain shapes in oriented millimetres. */
export interface Scene {
  readonly build: Build;
  readonly orientation: Orientation;
  /** The board's edge. */
  readonly outline: Rect;
  readonly holes: readonly HoleShape[];
  /** Everything that is drawn. */
  readonly bounds: Rect;
  readonly blocks: readonly Block[];
  readonly plugs: readonly PlugShape[];
  readonly wires: readonly WireShape[];
  readonly sleeves: readonly SleeveShape[];
  readonly flags: readonly FlagShape[];
  readonly titles: readonly TitleShape[];
}
