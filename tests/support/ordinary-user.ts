/** Root may do anything, so what an ordinary user may not do is tried as "nobody", Linux's overflow user 65534. */
export const ordinaryUser: { readonly uid?: number; readonly gid?: number } =
  process.getuid?.() === 0 ? { uid: 65_534, gid: 65_534 } : {};
