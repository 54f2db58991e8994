import { Component, type ComponentType, createElement } from 'preact';

/** A component that is drawn anew only when one of its properties is another. */
export function memo<Props extends object>(View: ComponentType<Props>): ComponentType<Props> {
  return class extends Component<Props> {
    override shouldComponentUpdate(next: Readonly<Props>): boolean {
      const before = this.props as Readonly<Record<string, unknown>>;
      const after = next as Readonly<Record<string, unknown>>;
      const names = new Set([...Object.keys(before), ...Object.keys(after)]);
      return [...names].some((name) => before[name] !== after[name]);
    }

    override render() {
      return createElement(View, this.props as Props);
    }
  };
}
