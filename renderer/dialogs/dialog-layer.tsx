import { Suspense } from 'react';
import { fetchedLater } from '../fetched';
import type { Dialog } from '../store/dialog';
import { useSession, useWorkbench } from '../workbench';
import { MessageDialog } from './message-dialog';
import { QuestionDialog } from './question-dialog';

const Search = fetchedLater(() => import('./search-dialog').then((part) => part.SearchDialog));
const Keys = fetchedLater(() => import('./keys-dialog').then((part) => part.KeysDialog));
const Cautions = fetchedLater(() => import('./cautions-dialog').then((part) => part.CautionsDialog));
const NewBuild = fetchedLater(() => import('./new-build-dialog').then((part) => part.NewBuildDialog));
const Recent = fetchedLater(() => import('./recent-dialog').then((part) => part.RecentDialog));
const Versions = fetchedLater(() => import('./versions-dialog').then((part) => part.VersionsDialog));
const AddConnector = fetchedLater(() =>
  import('./add-connector-dialog').then((part) => part.AddConnectorDialog),
);
const Numbering = fetchedLater(() =>
  import('../areas/document/connector/numbering-dialog').then((part) => part.NumberingDialog),
);
const AddLead = fetchedLater(() => import('./add-lead-dialog').then((part) => part.AddLeadDialog));
const AddUnit = fetchedLater(() => import('./add-unit-dialog').then((part) => part.AddUnitDialog));
const UnitOf = fetchedLater(() => import('./unit/unit-dialog').then((part) => part.UnitDialog));
const Places = fetchedLater(() => import('./places-dialog').then((part) => part.PlacesDialog));
const PinList = fetchedLater(() =>
  import('../areas/document/pin-list/pin-list-dialog').then((part) => part.PinListDialog),
);
const LooksLike = fetchedLater(() =>
  import('../areas/document/looks-like/looks-like-dialog').then((part) => part.LooksLikeDialog),
);
const Library = fetchedLater(() => import('./library/library-dialog').then((part) => part.LibraryDialog));
const PickSheet = fetchedLater(() =>
  import('./library/pick-sheet-dialog').then((part) => part.PickSheetDialog),
);
const Compare = fetchedLater(() => import('./compare/compare-dialog').then((part) => part.CompareDialog));
const Photo = fetchedLater(() =>
  import('../areas/document/photo/photo-dialog').then((part) => part.PhotoDialog),
);
const Meter = fetchedLater(() =>
  import('../areas/document/meter/meter-dialog').then((part) => part.MeterDialog),
);
const PrintPinout = fetchedLater(() =>
  import('./print-pinout/print-pinout-dialog').then((part) => part.PrintPinoutDialog),
);
const LargeSteps = fetchedLater(() =>
  import('../areas/hand-over/large/large-steps').then((part) => part.LargeSteps),
);
const PrintBenchSheet = fetchedLater(() =>
  import('./print-pinout/print-bench-sheet-dialog').then((part) => part.PrintBenchSheetDialog),
);
const PrintTrouble = fetchedLater(() =>
  import('./print-pinout/print-trouble-dialog').then((part) => part.PrintTroubleDialog),
);
const PrintLabels = fetchedLater(() =>
  import('./print-pinout/print-labels-dialog').then((part) => part.PrintLabelsDialog),
);
const HeaderPicture = fetchedLater(() =>
  import('./print-pinout/header-picture-dialog').then((part) => part.HeaderPictureDialog),
);
const Browse = fetchedLater(() => import('./browse-dialog').then((part) => part.BrowseDialog));

/**
 * The open dialogs, in files of their own but for the two that speak when nothing else works. Each waits for itself:
 * one that is fetched while another is open must not hide that one, or the two would take the focus from each other.
 */
export function DialogLayer() {
  const dialogs = useSession((session) => session.dialogs);
  return dialogs.map((dialog, place) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: a dialog's place in the stack is what tells it apart
    <Suspense key={`${place} ${dialog.kind}`} fallback={null}>
      <Shown dialog={dialog} />
    </Suspense>
  ));
}

function Shown({ dialog }: { readonly dialog: Dialog }) {
  const { session } = useWorkbench();
  const close = () => session.getState().closeDialog(dialog);
  switch (dialog.kind) {
    case 'search':
      return <Search onClose={close} />;
    case 'keys':
      return <Keys onClose={close} />;
    case 'cautions':
      return <Cautions onClose={close} />;
    case 'new-build':
      return <NewBuild onClose={close} />;
    case 'recent':
      return <Recent onClose={close} />;
    case 'versions':
      return <Versions onClose={close} />;
    case 'add-connector':
      return <AddConnector onClose={close} />;
    case 'number-connector':
      return <Numbering connector={dialog.connector} onClose={close} />;
    case 'add-lead':
      return <AddLead onClose={close} />;
    case 'add-unit':
      return <AddUnit onClose={close} />;
    case 'unit':
      return <UnitOf unit={dialog.unit} connector={dialog.connector} onClose={close} />;
    case 'places':
      return <Places plug={dialog.plug} onClose={close} />;
    case 'pin-list':
      return <PinList connector={dialog.connector} onClose={close} />;
    case 'looks-like':
      return <LooksLike connector={dialog.connector} onClose={close} />;
    case 'library':
      return <Library keep={dialog.keep} onClose={close} />;
    case 'pick-sheet':
      return <PickSheet of={dialog.of} answer={dialog.answer} />;
    case 'compare':
      return <Compare mine={dialog.mine} theirs={dialog.theirs} of={dialog.of} onClose={close} />;
    case 'photo':
      return <Photo connector={dialog.connector} onClose={close} />;
    case 'meter':
      return <Meter connector={dialog.connector} onClose={close} />;
    case 'print-pinout':
      return <PrintPinout onClose={close} />;
    case 'large-steps':
      return <LargeSteps onClose={close} />;
    case 'large-trial':
      return null;
    case 'print-trouble':
      return <PrintTrouble onClose={close} />;
    case 'print-labels':
      return <PrintLabels onClose={close} />;
    case 'print-bench-sheet':
      return <PrintBenchSheet onClose={close} />;
    case 'header-picture':
      return <HeaderPicture connector={dialog.connector} onClose={close} />;
    case 'message':
      return <MessageDialog message={dialog.message} onClose={close} />;
    case 'question':
      return <QuestionDialog question={dialog.question} answer={dialog.answer} />;
    case 'browse-open':
      return <Browse purpose={{ kind: 'open', answer: dialog.answer }} />;
    case 'browse-folder':
      return <Browse purpose={{ kind: 'folder', answer: dialog.answer }} />;
    case 'browse-save':
      return (
        <Browse
          purpose={{ kind: 'save', suggested: dialog.suggested, file: dialog.file, answer: dialog.answer }}
        />
      );
  }
}
