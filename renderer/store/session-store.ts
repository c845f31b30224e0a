import { createStore, type StoreApi } from 'zustand/vanilla';
import { type MachineState, RESTING } from '../../boards/circuit/machine-state';
import type { Seat } from '../../boards/document/build';
import type { Connector } from '../../boards/document/connector';
import { type PlugRef, samePlug } from '../../boards/document/lookup';
import type { TraySide } from '../../boards/document/tray';
import type { Settings } from '../../boards/host';
import { type Dialog, isOfBuild } from './dialog';
import {
  type Area,
  type DocumentPage,
  type Hovered,
  type Moving,
  type Placing,
  type PlanStep,
  pageOf,
  type Selection,
  type ShelfTab,
  type TrayDraft,
  type TrayTool,
  type WayDraft,
} from './session';

/** What the person is doing now. Nothing of it is saved or undone. */
export interface Session {
  readonly area: Area;
  /** Only in the Document area. */
  readonly page: DocumentPage;
  readonly shelf: ShelfTab;
  readonly selection: Selection;
  readonly placing: Placing | null;
  /** Whether the best seating stands beside the wiring. */
  readonly seatingOpen: boolean;
  /** Plugs that keep the place they have when the best seating is worked out. */
  readonly kept: readonly PlugRef[];
  /** A seat of the best seating that is shown on the drawing beside the one of now. */
  readonly planned: Seat | null;
  /** Only on the board plan. */
  readonly moving: Moving | null;
  readonly planStep: PlanStep;
  /** A connector to be pasted, on this board or the next one. */
  readonly copied: Connector | null;
  /** From which side the tray is looked at; only in the Route area. */
  readonly traySide: TraySide;
  readonly trayTool: TrayTool;
  readonly trayDraft: TrayDraft | null;
  readonly wayDraft: WayDraft | null;
  /** Kinds of cables that neither the shelf nor the map shows. */
  readonly hiddenCables: readonly string[];
  /** Whether all cables laid together stand beside the map. */
  readonly layingOpen: boolean;
  readonly hovered: Hovered | null;
  /** Connectors to bring into sight once the board is drawn in the Wire area. */
  readonly sought: readonly string[];
  /** What the power bar asks the circuit about. */
  readonly machine: MachineState;
  /** The step that is shown in the Hand over area; null: the first that is not done. */
  readonly step: string | null;
  /** The cause that is shown in the Diagnose area; null: the likeliest. */
  readonly suspect: string | null;
  /** The trial that is shown there, by its id; null: the best one. */
  readonly trial: string | null;
  /** Open dialogs, the topmost last. */
  readonly dialogs: readonly Dialog[];
  /** What was last said to screen readers; the number tells repeats apart. */
  readonly announcement: { readonly text: string; readonly count: number };
  /** A passing message in the strip: a refusal, a save. */
  readonly message: string | null;
  readonly settings: Settings;

  /** Another build is on the bench, or none: nothing of the last one is chosen, in the hand, open or kept in mind. */
  readonly beginAnew: () => void;
  readonly goTo: (area: Area, sought?: readonly string[]) => void;
  readonly showPage: (page: DocumentPage) => void;
  readonly showShelf: (shelf: ShelfTab) => void;
  readonly select: (selection: Selection) => void;
  readonly hover: (hovered: Hovered | null) => void;
  readonly setMachine: (change: Partial<MachineState>) => void;
  readonly take: (plug: PlugRef, candidate: Seat | null, turn: Seat['turn'], by: Placing['by']) => void;
  readonly aim: (candidate: Seat | null) => void;
  readonly turnInHand: (turn: Seat['turn'], candidate: Seat | null) => void;
  readonly letGo: () => void;
  readonly openSeating: (open: boolean) => void;
  readonly keep: (plug: PlugRef, kept: boolean) => void;
  /** Chooses a plug and shows where it is planned; null: only the plug. */
  readonly showPlanned: (plug: PlugRef, planned: Seat | null) => void;
  readonly move: (moving: Moving | null) => void;
  readonly snapTo: (step: PlanStep) => void;
  readonly lookFrom: (side: TraySide) => void;
  readonly pickTool: (tool: TrayTool) => void;
  readonly draftWay: (draft: WayDraft | null) => void;
  readonly hideCables: (families: readonly string[]) => void;
  readonly openLaying: (open: boolean) => void;
  readonly draft: (draft: TrayDraft | null) => void;
  readonly keepCopy: (connector: Connector) => void;
  readonly showStep: (step: string | null) => void;
  readonly showSuspect: (cause: string | null) => void;
  readonly showTrial: (trial: string | null) => void;
  readonly openDialog: (dialog: Dialog) => void;
  /** Closes the topmost dialog, or all of them. */
  readonly closeDialog: (dialog: Dialog) => void;
  readonly announce: (text: string) => void;
  /** Shows a message in the strip and says it. */
  readonly tell: (text: string) => void;
  readonly changeSettings: (settings: Settings) => void;
}

export type SessionStore = StoreApi<Session>;

/** What is of one build alone: with the next one it begins anew. */
const ANEW = {
  selection: { kind: 'nothing' },
  placing: null,
  kept: [],
  planned: null,
  moving: null,
  traySide: 'front',
  trayTool: 'choose',
  trayDraft: null,
  wayDraft: null,
  hiddenCables: [],
  layingOpen: false,
  hovered: null,
  sought: [],
  machine: RESTING,
  step: null,
  suspect: null,
  trial: null,
  message: null,
} as const satisfies Partial<Session>;

export function createSession(): SessionStore {
  return createStore<Session>()((set) => ({
    area: 'wire',
    page: 'plan',
    shelf: 'leads',
    seatingOpen: false,
    planStep: 'tenth-mm',
    copied: null,
    ...ANEW,
    dialogs: [],
    announcement: { text: '', count: 0 },
    settings: { theme: 'system', largeType: false },

    beginAnew: () =>
      set(({ dialogs }) => ({ ...ANEW, dialogs: dialogs.filter((dialog) => !isOfBuild(dialog)) })),
    goTo: (area, sought = []) =>
      set(({ page, selection }) => ({
        area,
        sought,
        placing: null,
        planned: null,
        moving: null,
        trayDraft: null,
        wayDraft: null,
        trayTool: 'choose',
        page: pageOf(selection) ?? page,
      })),
    showPage: (page) => set({ page, moving: null }),
    showShelf: (shelf) => set({ shelf }),
    select: (selection) => set({ selection, message: null, planned: null, wayDraft: null }),
    hover: (hovered) => set({ hovered }),
    setMachine: (change) => set(({ machine }) => ({ machine: { ...machine, ...change } })),
    take: (plug, candidate, turn, by) =>
      set({
        placing: { plug, candidate, turn, by },
        selection: { kind: 'plug', plug },
        message: null,
        planned: null,
      }),
    aim: (candidate) => set(({ placing }) => (placing ? { placing: { ...placing, candidate } } : {})),
    turnInHand: (turn, candidate) =>
      set(({ placing }) => (placing ? { placing: { ...placing, turn, candidate } } : {})),
    letGo: () => set({ placing: null, moving: null, trayDraft: null }),
    openSeating: (seatingOpen) => set({ seatingOpen, planned: null }),
    keep: (plug, kept) =>
      set(({ kept: before }) => {
        const others = before.filter((each) => !samePlug(each, plug));
        return { kept: kept ? [...others, plug] : others };
      }),
    showPlanned: (plug, planned) => set({ selection: { kind: 'plug', plug }, message: null, planned }),
    move: (moving) => set({ moving }),
    snapTo: (planStep) => set({ planStep }),
    lookFrom: (traySide) => set({ traySide }),
    pickTool: (trayTool) => set({ trayTool, trayDraft: null }),
    draft: (trayDraft) => set({ trayDraft }),
    draftWay: (wayDraft) => set({ wayDraft }),
    hideCables: (hiddenCables) => set({ hiddenCables }),
    openLaying: (layingOpen) => set({ layingOpen }),
    keepCopy: (copied) => set({ copied }),
    showStep: (step) => set({ step }),
    showSuspect: (suspect) => set({ suspect }),
    showTrial: (trial) => set({ trial }),
    openDialog: (dialog) => set(({ dialogs }) => ({ dialogs: [...dialogs, dialog] })),
    closeDialog: (dialog) => set(({ dialogs }) => ({ dialogs: dialogs.filter((open) => open !== dialog) })),
    announce: (text) =>
      set(({ announcement }) => ({ announcement: { text, count: announcement.count + 1 } })),
    tell: (text) =>
      set(({ announcement }) => ({
        message: text,
        // The pointer may lie over something; what is told goes before what that is.
        hovered: null,
        announcement: { text, count: announcement.count + 1 },
      })),
    changeSettings: (settings) => set({ settings }),
  }));
}
