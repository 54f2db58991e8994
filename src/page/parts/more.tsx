import type { ComponentChildren } from 'preact';

interface MoreProps {
  readonly title: string;
  readonly children: ComponentChildren;
  readonly onOpen?: () => void;
}

/** What is seldom needed, behind one line. */
export const More = ({ title, children, onOpen }: MoreProps) => (
  <details class="more" onToggle={({ currentTarget }) => currentTarget.open && onOpen?.()}>
    <summary>{title}</summary>
    <div class="more-inside">{children}</div>
  </details>
);
