import type { PlugRef } from '../document/lookup';
import type { FieldProblem } from '../document/problem/problem';
import type { TraySide } from '../document/tray';
import type { FitRefusal } from '../fit/fit';

/** What a build can only hold so many of. */
export type Countable =
  | 'leads'
  | 'connectors'
  | 'sockets'
  | 'units'
  | 'seats'
  | 'plugs'
  | 'statements'
  | 'readings'
  | 'letters'
  | 'photos'
  | 'points'
  | 'lines'
  | 'causes'
  | 'tray points'
  | 'openings'
  | 'bays'
  | 'standoff places'
  | 'fan places'
  | 'paths'
  | 'choices'
  | 'chosen ways';

/** Why a command was not carried out. Closed: every one has words in refusal-words.ts. */
export type Refusal =
  | { readonly code: 'invalid'; readonly fields: readonly FieldProblem[]; readonly more: number }
  | { readonly code: 'unknown-lead'; readonly lead: string }
  | { readonly code: 'unknown-plug'; readonly lead: string; readonly plug: string }
  | { readonly code: 'unknown-hole'; readonly lead: string; readonly plug: string; readonly hole: string }
  | { readonly code: 'unknown-wire'; readonly lead: string; readonly wire: number }
  | { readonly code: 'unknown-part'; readonly lead: string; readonly part: string }
  | { readonly code: 'no-colour'; readonly lead: string; readonly part: string }
  | { readonly code: 'no-switch'; readonly lead: string; readonly part: string }
  | { readonly code: 'no-fan'; readonly lead: string; readonly part: string }
  | { readonly code: 'unknown-photo'; readonly photo: string }
  | { readonly code: 'unknown-connector'; readonly connector: string }
  | { readonly code: 'unknown-unit'; readonly unit: string }
  | { readonly code: 'no-drive'; readonly unit: string }
  | { readonly code: 'no-hub'; readonly unit: string }
  | { readonly code: 'no-unit-there'; readonly place: string }
  | { readonly code: 'unknown-pin'; readonly connector: string; readonly pin: string }
  | { readonly code: 'unknown-pins'; readonly connector: string; readonly pins: readonly string[] }
  | { readonly code: 'pins-twice'; readonly connector: string; readonly pins: readonly string[] }
  | { readonly code: 'unknown-reading'; readonly connector: string; readonly reading: number }
  | { readonly code: 'unknown-observation'; readonly observation: string; readonly nearest?: string }
  | { readonly code: 'unknown-cause'; readonly cause: string; readonly nearest?: string }
  | { readonly code: 'unknown-line'; readonly line: number }
  | { readonly code: 'no-alternative'; readonly connector: string; readonly pin: string }
  | { readonly code: 'no-mirror'; readonly connector: string; readonly pins: readonly string[] }
  | {
      readonly code: 'reshape-loses';
      readonly connector: string;
      readonly pins: readonly string[];
      readonly plugs: readonly PlugRef[];
    }
  | { readonly code: 'plug-twice'; readonly lead: string; readonly plug: string }
  | { readonly code: 'run-twice'; readonly lead: string; readonly plug: string }
  | { readonly code: 'run-ring'; readonly lead: string; readonly plug: string }
  | { readonly code: 'no-run'; readonly lead: string; readonly plug: string }
  | { readonly code: 'no-way-chosen'; readonly lead: string; readonly plug: string }
  | { readonly code: 'not-seated'; readonly lead: string; readonly plug: string }
  | {
      readonly code: 'no-fit';
      readonly lead: string;
      readonly plug: string;
      readonly connector: string;
      readonly refusals: readonly FitRefusal[];
    }
  | {
      readonly code: 'id-taken';
      readonly kind: 'lead' | 'connector' | 'photo' | 'unit' | 'place' | 'path';
      readonly id: string;
    }
  | { readonly code: 'no-contact'; readonly lead: string; readonly plug: string; readonly hole?: string }
  | { readonly code: 'hole-blocked'; readonly lead: string; readonly plug: string; readonly hole: string }
  | { readonly code: 'hole-taken'; readonly lead: string; readonly plug: string; readonly hole: string }
  | { readonly code: 'single-already'; readonly lead: string; readonly plug: string }
  | { readonly code: 'shell'; readonly lead: string; readonly plug: string }
  | { readonly code: 'pins-lost'; readonly connector: string; readonly pins: readonly string[] }
  | { readonly code: 'no-tray' }
  | { readonly code: 'tray-there' }
  | { readonly code: 'unknown-place'; readonly place: string }
  | { readonly code: 'unknown-path'; readonly path: string }
  | { readonly code: 'other-kind'; readonly place: string }
  | { readonly code: 'named-twice'; readonly kind: 'place' | 'path'; readonly id: string }
  | { readonly code: 'in-a-wall'; readonly place: string }
  | { readonly code: 'fixed-standoff'; readonly place: string }
  | { readonly code: 'supply-there' }
  | { readonly code: 'no-path-end'; readonly place: string }
  | { readonly code: 'path-loop'; readonly place: string }
  | { readonly code: 'path-sides'; readonly place: string; readonly side: TraySide }
  | { readonly code: 'full'; readonly what: Countable; readonly limit: number };
