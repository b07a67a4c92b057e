import { Component, type ReactNode } from 'react';
import './ErrorBoundary.css';

interface Props {
  /** What stands here, in words: `the lanes`. */
  readonly panel: string;
  readonly children: ReactNode;
}

/** Keeps a panel that throws to itself: the rest of the screen lives on, and the panel can be tried again. */
export class ErrorBoundary extends Component<Props, { readonly message: string | null }> {
  override state = { message: null };

  static getDerivedStateFromError(error: unknown): { message: string } {
    return { message: error instanceof Error ? error.message : String(error) };
  }

  override render(): ReactNode {
    if (this.state.message === null) return this.props.children;
    return (
      <div className="error-boundary" role="alert">
        <p>
          A fault in the program keeps {this.props.panel} from being shown; your project is untouched. (
          {this.state.message})
        </p>
        <button type="button" className="frame-button" onClick={() => this.setState({ message: null })}>
          Try again
        </button>
      </div>
    );
  }
}
