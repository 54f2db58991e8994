import { type ComponentType, createElement } from 'preact';
import { useEffect, useState } from 'preact/hooks';

interface LaterProps<Props> {
  readonly load: () => Promise<ComponentType<Props>>;
  readonly props: Props;
  readonly loading: string;
  readonly failed: string;
}

/** A component that is loaded when it is first drawn. */
export function Later<Props extends object>({ load, props, loading, failed }: LaterProps<Props>) {
  const [state, setState] = useState<{ readonly View?: ComponentType<Props>; readonly isLost?: true }>({});
  useEffect(() => {
    let isGone = false;
    load().then(
      (View) => isGone || setState({ View }),
      () => isGone || setState({ isLost: true }),
    );
    return () => {
      isGone = true;
    };
  }, [load]);
  if (state.View) return createElement(state.View, props);
  return createElement(
    'p',
    { class: 'hint', role: state.isLost ? 'alert' : undefined },
    state.isLost ? failed : loading,
  );
}
