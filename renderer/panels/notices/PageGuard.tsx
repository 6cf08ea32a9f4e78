import { Component, type ReactNode } from 'react'
import { OWN_FAULT } from '../../state/fault.ts'

interface Props {
  /** A new one gives the page another try. */
  readonly attempt: unknown
  readonly onUndo: () => void
  /** Hears of what failed, for the log. */
  readonly onFault: (error: unknown) => void
  readonly children: ReactNode
}

interface Guarded {
  readonly error: Error | null
  readonly attempt: unknown
}

/** A page that cannot be drawn says so and leaves the rest of the window alone. */
export class PageGuard extends Component<Props, Guarded> {
  override state: Guarded = { error: null, attempt: this.props.attempt }

  static getDerivedStateFromError(error: unknown) {
    return { error: error instanceof Error ? error : new Error(String(error)) }
  }

  static getDerivedStateFromProps(props: Props, state: Guarded) {
    return props.attempt === state.attempt ? null : { error: null, attempt: props.attempt }
  }

  override componentDidCatch(error: unknown) {
    this.props.onFault(error)
  }

  override render() {
    if (this.state.error === null) return this.props.children
    return (
      <main className="page-failed" role="alert">
        <h2>This page could not be drawn</h2>
        <p>{OWN_FAULT} The log says more.</p>
        <p>Undo the last change, or open another plan.</p>
        <button type="button" className="plain" onClick={this.props.onUndo}>
          Undo
        </button>
      </main>
    )
  }
}
