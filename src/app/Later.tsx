import { Component, Suspense, type ReactNode } from 'react';

/** Holds parts of the screen that are fetched when first used; where one cannot be fetched, the rest stays as it is. */
export class Later extends Component<{ readonly failed: () => void; readonly children: ReactNode }, { readonly gone: boolean }> {
  override state = { gone: false };

  static getDerivedStateFromError(): { readonly gone: boolean } {
    return { gone: true };
  }

  override componentDidCatch(): void {
    this.props.failed();
  }

  override render(): ReactNode {
    return this.state.gone ? null : <Suspense fallback={null}>{this.props.children}</Suspense>;
  }
}
