import { Component, type ReactNode } from 'react';
import { NoAnswer } from '../host/no-answer';
import { CrashScreen, type WrittenReport } from './crash-screen';

interface ErrorBoundaryProps {
  readonly children: ReactNode;
  /** Keeps what can be kept, and says whether that is; null where there is nothing to lose. */
  readonly onBug: () => Promise<boolean | null>;
  /** Says that the program behind the window is gone; what is open stays on the screen. */
  readonly onNoAnswer: (words: string) => void;
  /** Writes a report of the failure. */
  readonly report: (thrown: unknown) => Promise<WrittenReport | null>;
}

interface ErrorBoundaryState {
  readonly thrown: { readonly value: unknown } | null;
  /** Whether unsaved work has been kept; null until that is known, and where there is none. */
  readonly kept: boolean | null;
}

/** Catches what no part of the window expected: bugs while drawing, and those nobody awaited. */
export class ErrorBoundary extends Component<ErrorBoundaryProps, ErrorBoundaryState> {
  override state: ErrorBoundaryState = { thrown: null, kept: null };

  static getDerivedStateFromError(value: unknown): Pick<ErrorBoundaryState, 'thrown'> {
    return { thrown: { value } };
  }

  override componentDidMount(): void {
    window.addEventListener('error', this.onUncaught);
    window.addEventListener('unhandledrejection', this.onUncaught);
  }

  override componentWillUnmount(): void {
    window.removeEventListener('error', this.onUncaught);
    window.removeEventListener('unhandledrejection', this.onUncaught);
  }

  override componentDidCatch(): void {
    this.keep();
  }

  private keep(): void {
    const tell = (kept: boolean | null) => this.setState({ kept });
    void this.props.onBug().then(tell, () => tell(false));
  }

  private readonly onUncaught = (event: ErrorEvent | PromiseRejectionEvent): void => {
    const value: unknown = 'reason' in event ? event.reason : event.error;
    if (value === null || value === undefined) return;
    if (value instanceof NoAnswer) this.props.onNoAnswer(value.message);
    else {
      this.keep();
      this.setState({ thrown: { value } });
    }
  };

  override render(): ReactNode {
    const { thrown, kept } = this.state;
    return thrown === null ? (
      this.props.children
    ) : (
      <CrashScreen thrown={thrown.value} kept={kept} report={this.props.report} />
    );
  }
}
