import { Component, type ReactNode } from 'react';
import { Button } from '../widgets/Button';

export interface FaultBoundaryProps {
  readonly children: ReactNode;
  /** What failed, in words: 'The drawing', 'This page', 'The program'. */
  readonly of: string;
  /** Another value tries again: the page or plan that is shown. */
  readonly tryAgainWith: unknown;
  /** Saves the plan to a file; a fault on the screen never costs the plan. */
  readonly onSave?: (() => void) | undefined;
}

interface Fault {
  readonly reason: string | null;
  readonly with: unknown;
}

/** Holds a fault of the program to the part of the screen where it happened, and offers the plan as a file. */
export class FaultBoundary extends Component<FaultBoundaryProps, Fault> {
  override state: Fault = { reason: null, with: this.props.tryAgainWith };

  static getDerivedStateFromError(error: unknown): Partial<Fault> {
    return { reason: error instanceof Error ? error.message : String(error) };
  }

  static getDerivedStateFromProps({ tryAgainWith }: FaultBoundaryProps, state: Fault): Fault | null {
    return tryAgainWith === state.with ? null : { reason: null, with: tryAgainWith };
  }

  override render(): ReactNode {
    if (this.state.reason === null) return this.props.children;
    return (
      <div className="fault" role="alert">
        <strong>{this.props.of} met a fault of this program.</strong>
        <p>
          The plan is not touched. Reason: <span className="mono">{this.state.reason}</span>
        </p>
        <Button onClick={() => this.setState({ reason: null })}>Try again</Button>
        {this.props.onSave && <Button onClick={this.props.onSave}>Save the plan to a file</Button>}
      </div>
    );
  }
}
