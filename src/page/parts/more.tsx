import type { ComponentChildren } from 'preact';

/** What is seldom needed, behind one line. */
export const More = ({
  title,
  children,
}: {
  readonly title: string;
  readonly children: ComponentChildren;
}) => (
  <details class="more">
    <summary>{title}</summary>
    <div class="more-inside">{children}</div>
  </details>
);
