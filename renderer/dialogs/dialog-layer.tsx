import { lazy, Suspense } from 'react';
import type { Dialog } from '../store/dialog';
import { useSession, useWorkbench } from '../workbench';

const Search = lazy(() => import('./search-dialog').then((part) => ({ default: part.SearchDialog })));
const Keys = lazy(() => import('./keys-dialog').then((part) => ({ default: part.KeysDialog })));
const Cautions = lazy(() => import('./cautions-dialog').then((part) => ({ default: part.CautionsDialog })));
const NewBuild = lazy(() => import('./new-build-dialog').then((part) => ({ default: part.NewBuildDialog })));
const Recent = lazy(() => import('./recent-dialog').then((part) => ({ default: part.RecentDialog })));
const Versions = lazy(() => import('./versions-dialog').then((part) => ({ default: part.VersionsDialog })));
const AddConnector = lazy(() =>
  import('./add-connector-dialog').then((part) => ({ default: part.AddConnectorDialog })),
);
const Numbering = lazy(() =>
  import('../areas/document/connector/numbering-dialog').then((part) => ({ default: part.NumberingDialog })),
);
const AddLead = lazy(() => import('./add-lead-dialog').then((part) => ({ default: part.AddLeadDialog })));
const AddUnit = lazy(() => import('./add-unit-dialog').then((part) => ({ default: part.AddUnitDialog })));
const UnitOf = lazy(() => import('./unit/unit-dialog').then((part) => ({ default: part.UnitDialog })));
const Places = lazy(() => import('./places-dialog').then((part) => ({ default: part.PlacesDialog })));
const PinList = lazy(() =>
  import('../areas/document/pin-list/pin-list-dialog').then((part) => ({ default: part.PinListDialog })),
);
const LooksLike = lazy(() =>
  import('../areas/document/looks-like/looks-like-dialog').then((part) => ({
    default: part.LooksLikeDialog,
  })),
);
const Library = lazy(() =>
  import('./library/library-dialog').then((part) => ({ default: part.LibraryDialog })),
);
const PickSheet = lazy(() =>
  import('./library/pick-sheet-dialog').then((part) => ({ default: part.PickSheetDialog })),
);
const Compare = lazy(() =>
  import('./compare/compare-dialog').then((part) => ({ default: part.CompareDialog })),
);
const Photo = lazy(() =>
  import('../areas/document/photo/photo-dialog').then((part) => ({ default: part.PhotoDialog })),
);
const Meter = lazy(() =>
  import('../areas/document/meter/meter-dialog').then((part) => ({ default: part.MeterDialog })),
);
const PrintPinout = lazy(() =>
  import('./print-pinout/print-pinout-dialog').then((part) => ({ default: part.PrintPinoutDialog })),
);
const LargeSteps = lazy(() =>
  import('../areas/hand-over/large/large-steps').then((part) => ({ default: part.LargeSteps })),
);
const PrintBenchSheet = lazy(() =>
  import('./print-pinout/print-bench-sheet-dialog').then((part) => ({ default: part.PrintBenchSheetDialog })),
);
const PrintTrouble = lazy(() =>
  import('./print-pinout/print-trouble-dialog').then((part) => ({ default: part.PrintTroubleDialog })),
);
const PrintLabels = lazy(() =>
  import('./print-pinout/print-labels-dialog').then((part) => ({ default: part.PrintLabelsDialog })),
);
const HeaderPicture = lazy(() =>
  import('./print-pinout/header-picture-dialog').then((part) => ({ default: part.HeaderPictureDialog })),
);
const Message = lazy(() => import('./message-dialog').then((part) => ({ default: part.MessageDialog })));
const Question = lazy(() => import('./question-dialog').then((part) => ({ default: part.QuestionDialog })));
const Browse = lazy(() => import('./browse-dialog').then((part) => ({ default: part.BrowseDialog })));

/**
 * The open dialogs, each fetched when it is first wanted. Each waits for itself: one that is fetched
 * while another is open must not hide that one, or the two would take the focus from each other.
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
      return <Message message={dialog.message} onClose={close} />;
    case 'question':
      return <Question question={dialog.question} answer={dialog.answer} />;
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
