import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import type { HostApi } from '../boards/host';
import { App, fetchBench } from './app';
import { CrashScreen } from './errors/crash-screen';
import { ErrorBoundary } from './errors/error-boundary';
import { writeReport } from './errors/write-report';
import { fetchRest } from './fetched';
import { openFirst, openHandle } from './files/open-document';
import { connect } from './host/connect';
import './frame/frame.css';
import { keepLook } from './look/keep-look';
import { answerRequests } from './requests';
import { closeWithoutSubject } from './store/dialog-subjects';
import { createEditor } from './store/editor';
import { keepRecovery } from './store/recovery';
import { createSession } from './store/session-store';
import { tellState } from './tell-state';
import { recoveryTroubleWords } from './words/host-words';
import { type Workbench, WorkbenchContext } from './workbench';

/** Connects to the machine, makes the stores and draws the window. */
export async function openWindow(): Promise<void> {
  const place = document.getElementById('window');
  if (place === null) throw new Error('The page has no place for the window');
  const root = createRoot(place);
  const page = crypto.randomUUID();
  const host = await connect(page).catch((thrown: unknown) => {
    root.render(<CrashScreen thrown={thrown} />);
    return null;
  });
  if (host === null) return;
  const workbench = await makeWorkbench(host, page);
  answerRequests(workbench);
  const { toOpen } = workbench.about;
  if (toOpen.length > 0) {
    // Not for long: a file on a slow disk must not keep the window away.
    await Promise.race([
      Promise.all([openFirst(workbench, toOpen, openHandle), fetchBench()]),
      after(LONGEST_BLANK_MS),
    ]);
  }
  root.render(
    <StrictMode>
      <WorkbenchContext value={workbench}>
        <ErrorBoundary
          onBug={() => workbench.recovery.keepNow()}
          onNoAnswer={(words) => workbench.session.getState().tell(words)}
          report={(thrown) => writeReport(host, thrown)}
        >
          <App />
        </ErrorBoundary>
      </WorkbenchContext>
    </StrictMode>,
  );
  // After the first paint: the machine takes it as the sign that the page is there.
  requestAnimationFrame(() => tellState(workbench));
  requestIdleCallback(() => void fetchBench().then(fetchRest, () => undefined));
}

const LONGEST_BLANK_MS = 500;

function after(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms));
}

async function makeWorkbench(host: HostApi, page: string): Promise<Workbench> {
  const [about, settings] = await Promise.all([host.about({ page }), host.readSettings()]);
  const editor = createEditor();
  const session = createSession();
  session.getState().changeSettings(settings);
  keepLook(session);
  closeWithoutSubject(editor, session);
  const recovery = keepRecovery(host, editor, {
    page,
    newId: () => crypto.randomUUID(),
    onTrouble: (problem) => session.getState().tell(recoveryTroubleWords(problem)),
  });
  return { host, page, about, editor, session, recovery, canvas: { current: null } };
}
