import { Component, type ReactNode } from 'react';
import { CrashScreen, type WrittenReport } from './crash-screen';

interface ErrorBoundaryProps {
  readonly children: ReactNode;
  /** Keeps what can be kept. */
  readonly onBug: () => void;
  /** Writes a report of the failure. */
  readonly report: (thrown: unknown) => Promise<WrittenReport | null>;
}

interface ErrorBoundaryState {
  readonly thrown: { readonly value: unknown } | null;
}

/** Catches what no part of the window expected: bugs while drawing, and those nobody awaited. */
export class ErrorBoundary extends Component<ErrorBoundaryProps, ErrorBoundaryState> {
  override state: ErrorBoundaryState = { thrown: null };

  static getDerivedStateFromError(value: unknown): ErrorBoundaryState {
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
    this.props.onBug();
  }

  private readonly onUncaught = (event: ErrorEvent | PromiseRejectionEvent): void => {
    const value: unknown = 'reason' in event ? event.reason : event.error;
    if (value === null || value === undefined) return;
    this.props.onBug();
    this.setState({ thrown: { value } });
  };

  override render(): ReactNode {
    const { thrown } = this.state;
    return thrown === null ? (
      this.props.children
    ) : (
      <CrashScreen thrown={thrown.value} report={this.props.report} />
    );
  }
}
