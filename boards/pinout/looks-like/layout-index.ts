import { byIdentity } from '../../base/by-identity';
import { type Face, facesOf } from './face';
import type { KnownLayout } from './known-layout';
import type { Shape } from './orientation';

/** One layout in one of its orientations. */
export interface IndexedFace {
  readonly layout: KnownLayout;
  readonly face: Face;
}

interface SameShape extends Shape {
  readonly faces: IndexedFace[];
}

/** The faces of a list of layouts, set out by shape so that those that cannot fit are never looked at. */
export const layoutIndex: (layouts: readonly KnownLayout[]) => readonly SameShape[] = byIdentity(
  (layouts) => {
    const byShape = new Map<string, SameShape>();
    for (const layout of layouts) {
      for (const face of facesOf(layout.connector)) {
        const { rows, cols } = face;
        const known = byShape.get(`${rows}x${cols}`) ?? { rows, cols, faces: [] };
        byShape.set(`${rows}x${cols}`, known);
        known.faces.push({ layout, face });
      }
    }
    return [...byShape.values()];
  },
);
