import type { Runner } from '../store/runner.ts';

/** A token's last use is written once in this time, so that reading seldom writes. */
const precisionMs = 60_000;

/** Writes when tokens were last used, while their requests go on. */
export function lastUses(runner: Runner) {
  const writing = new Set<string>();

  async function write(token: string, now: Date): Promise<void> {
    const at = now.toISOString();
    const before = new Date(now.getTime() - precisionMs).toISOString();
    await runner.change((change) =>
      change
        .updateTable('token')
        .set({ last_used: at })
        .where('id', '=', token)
        .where((row) => row.or([row('last_used', 'is', null), row('last_used', '<=', before)]))
        .execute(),
    );
  }

  /** A store that cannot be written keeps nobody from reading, so that failure is left for the next use. */
  return (token: string, lastUsed: string | null, now: Date): void => {
    const isRecent = lastUsed !== null && now.getTime() - Date.parse(lastUsed) < precisionMs;
    if (isRecent || writing.has(token)) return;
    writing.add(token);
    write(token, now)
      .catch(() => undefined)
      .finally(() => writing.delete(token));
  };
}
