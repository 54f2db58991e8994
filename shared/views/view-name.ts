import { z } from 'zod';

/** Views that show the whole folder in one way. */
export const wholeViews = ['all', 'sheet', 'outside', 'inside', 'closed', 'half-open', 'steps'] as const;
export type WholeView = (typeof wholeViews)[number];

const stepView = z.templateLiteral(['step-', z.string().regex(/^[1-9]\d?$/u)], {
  error: 'there is no such view; steps are step-1, step-2 and so on',
});

/** What to show: a whole view, or one step as `step-3`. */
export const viewName = z.union([z.enum(wholeViews), stepView]).meta({
  description:
    '`sheet` shows the open sheet with its parts named, `outside` and `inside` show the flat sleeve, `closed` both covers, `half-open` the standing book, `steps` every step, `step-1`, `step-2` … one of them, and `all` (the default) everything.',
});

export type ViewName = z.output<typeof viewName>;

/** The query of the views. */
export const viewsQuery = z.strictObject({ view: viewName.default('all') });
