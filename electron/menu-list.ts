/** An action of the page, by the id it has there; or something the system does itself. */
export type MenuItem =
  | { readonly id: string; readonly label: string; readonly accelerator?: string }
  | { readonly role: 'cut' | 'copy' | 'paste' | 'selectAll' | 'togglefullscreen' | 'minimize' | 'quit' }
  | 'line';

export interface Menu {
  readonly label: string;
  readonly items: readonly MenuItem[];
}

/** The menu bar. The page knows what each action does and whether it can be done now. */
export const MENU_BAR: readonly Menu[] = [
  {
    label: 'File',
    items: [
      { id: 'file.new', label: 'New build…', accelerator: 'CmdOrCtrl+N' },
      { id: 'file.open', label: 'Open…', accelerator: 'CmdOrCtrl+O' },
      { id: 'file.library', label: 'Library of sheets…', accelerator: 'CmdOrCtrl+Shift+O' },
      { id: 'help.demo', label: 'Open the demo build' },
      { id: 'help.demo-cables', label: 'Open the demo with every cable' },
      { id: 'help.demo-cramped', label: 'Open the demo of a cramped case' },
      'line',
      { id: 'file.save', label: 'Save', accelerator: 'CmdOrCtrl+S' },
      { id: 'file.save-as', label: 'Save as…', accelerator: 'CmdOrCtrl+Shift+S' },
      { id: 'file.versions', label: 'Earlier versions…' },
      'line',
      {
        id: 'file.print-bench-sheet',
        label: 'Print the bench sheet…',
        accelerator: 'CmdOrCtrl+Shift+P',
      },
      { id: 'file.print-pinout', label: 'Print the pinout…', accelerator: 'CmdOrCtrl+P' },
      { id: 'file.print-trouble', label: 'Print the trouble sheet…' },
      { id: 'file.print-labels', label: 'Print the cable labels…' },
      { id: 'file.save-list', label: 'Save the from-to list…' },
      { id: 'file.save-cables', label: 'Save the cable list…' },
      { id: 'file.header-picture', label: 'Save a picture of this header…' },
      'line',
      { id: 'file.close', label: 'Close', accelerator: 'CmdOrCtrl+W' },
      { role: 'quit' },
    ],
  },
  {
    label: 'Edit',
    items: [
      { id: 'edit.undo', label: 'Undo', accelerator: 'CmdOrCtrl+Z' },
      { id: 'edit.redo', label: 'Redo', accelerator: 'CmdOrCtrl+Shift+Z' },
      'line',
      { role: 'cut' },
      { role: 'copy' },
      { role: 'paste' },
      { role: 'selectAll' },
    ],
  },
  {
    label: 'View',
    items: [
      { id: 'area.document', label: 'Document', accelerator: 'CmdOrCtrl+1' },
      { id: 'area.wire', label: 'Wire', accelerator: 'CmdOrCtrl+2' },
      { id: 'area.route', label: 'Route', accelerator: 'CmdOrCtrl+3' },
      { id: 'area.diagnose', label: 'Diagnose', accelerator: 'CmdOrCtrl+4' },
      { id: 'area.hand-over', label: 'Hand over', accelerator: 'CmdOrCtrl+5' },
      'line',
      { id: 'view.zoom-in', label: 'Zoom in', accelerator: 'CmdOrCtrl+Plus' },
      { id: 'view.zoom-out', label: 'Zoom out', accelerator: 'CmdOrCtrl+-' },
      { id: 'view.fit', label: 'Show the whole board', accelerator: 'CmdOrCtrl+0' },
      { id: 'view.turn', label: 'Turn the view' },
      { id: 'view.mirror', label: 'Mirror the view' },
      'line',
      { id: 'view.theme-system', label: 'Theme of the system' },
      { id: 'view.theme-light', label: 'Light theme' },
      { id: 'view.theme-dark', label: 'Dark theme' },
      { id: 'view.large-type', label: 'Large type' },
      { id: 'view.large-steps', label: 'Steps in large letters', accelerator: 'F9' },
      { role: 'togglefullscreen' },
    ],
  },
  {
    label: 'Board',
    items: [
      { id: 'board.pin-list', label: 'Paste a pin list…', accelerator: 'CmdOrCtrl+Shift+L' },
      { id: 'board.looks-like', label: 'Looks like…', accelerator: 'CmdOrCtrl+Shift+K' },
      { id: 'board.photo', label: 'From a photo…' },
      { id: 'board.meter', label: 'From a meter…', accelerator: 'CmdOrCtrl+Shift+M' },
      'line',
      { id: 'board.turn-connector', label: 'Turn the chosen connector on the board' },
      {
        id: 'board.duplicate-connector',
        label: 'Duplicate the chosen connector',
        accelerator: 'CmdOrCtrl+D',
      },
      { id: 'board.copy-connector', label: 'Copy the chosen connector' },
      { id: 'board.paste-connector', label: 'Paste the copied connector' },
      { id: 'board.remove-connector', label: 'Remove the chosen connector from the board' },
      'line',
      { id: 'board.keep', label: 'Keep the board in the library…' },
      { id: 'board.keep-case', label: 'Keep the case in the library…' },
      { id: 'board.compare', label: 'Compare the board with a sheet…' },
      { id: 'board.compare-case', label: 'Compare the case with a sheet…' },
      'line',
      { id: 'board.best-seating', label: 'Plan the best seating…', accelerator: 'CmdOrCtrl+B' },
    ],
  },
  {
    label: 'Tray',
    items: [
      { id: 'tray.tie', label: 'Add a tie point' },
      { id: 'tray.bend', label: 'Add a bend' },
      { id: 'tray.end', label: 'Add a cable end' },
      { id: 'tray.opening', label: 'Add an opening' },
      { id: 'tray.bay', label: 'Add a bay' },
      { id: 'tray.supply', label: 'Add the supply unit' },
      { id: 'tray.standoff', label: 'Add a standoff' },
      { id: 'tray.fan', label: 'Add a fan' },
      { id: 'tray.path', label: 'Draw a path' },
      'line',
      { id: 'tray.turn-board', label: 'Turn the board on the tray' },
      { id: 'tray.remove', label: 'Remove the chosen place from the tray' },
      'line',
      { id: 'tray.lay-all', label: 'Lay all cables' },
      'line',
      {
        id: 'tray.other-side',
        label: 'Look at the tray from the other side',
        accelerator: 'CmdOrCtrl+Shift+B',
      },
    ],
  },
  {
    label: 'Help',
    items: [
      { id: 'help.keys', label: 'Keys…', accelerator: 'F1' },
      { id: 'help.cautions', label: 'Before you touch a pin…' },
    ],
  },
];
