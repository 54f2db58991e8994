/**
 * How the sign-in pages look: one column that fits 320 px, in the light or dark that the reader prefers. Contrasts are
 * 4.5 : 1 or more for text and 3 : 1 for borders and focus (WCAG 2.2, 1.4.3 and 1.4.11).
 */
export const signInStyle = `:root {
  color-scheme: light dark;
  --page: #f4f1ea;
  --sheet: #fffefb;
  --ink: #22303a;
  --quiet: #4d5b64;
  --edge: #7d8a92;
  --mark: #14577d;
  --on-mark: #ffffff;
  --trouble: #9c2318;
}
@media (prefers-color-scheme: dark) {
  :root {
    --page: #12191e;
    --sheet: #1c262d;
    --ink: #e9e6df;
    --quiet: #b4bfc5;
    --edge: #7f8d96;
    --mark: #8cc8ec;
    --on-mark: #0c1a23;
    --trouble: #ffa99e;
  }
}
* { box-sizing: border-box; }
body {
  margin: 0;
  min-height: 100vh;
  display: grid;
  align-items: start;
  justify-items: center;
  padding: clamp(0.75rem, 8vh, 6rem) 0.75rem 2rem;
  background: var(--page);
  color: var(--ink);
  font: 1.0625rem/1.5 system-ui, sans-serif;
}
main {
  width: 100%;
  max-width: 26rem;
  padding: 1.25rem clamp(1rem, 5vw, 2rem) 1.5rem;
  background: var(--sheet);
  border: 1px solid var(--edge);
  border-top: 0.5rem solid var(--mark);
}
h1 { margin: 0 0 1rem; font-size: 1.5rem; line-height: 1.2; }
p { margin: 0.75rem 0; color: var(--quiet); overflow-wrap: anywhere; }
p strong { color: var(--ink); }
.service { margin: 0; letter-spacing: 0.04em; }
ul { margin: 0.75rem 0; padding-left: 1.25rem; }
label { display: block; margin-bottom: 0.25rem; font-weight: 600; }
input, button { width: 100%; min-height: 2.75rem; padding: 0.5rem 0.75rem; font: inherit; border-radius: 0.25rem; }
input { background: var(--page); color: var(--ink); border: 1px solid var(--edge); }
input[aria-invalid] { border: 2px solid var(--trouble); }
button { margin: 0.5rem 0; background: var(--mark); color: var(--on-mark); border: 1px solid var(--mark); font-weight: 600; cursor: pointer; }
button:hover { text-decoration: underline; }
a { color: var(--mark); }
.sample { font-family: ui-monospace, monospace; white-space: nowrap; }
.trouble { padding: 0.5rem 0.75rem; border-left: 0.25rem solid var(--trouble); color: var(--trouble); }
:focus-visible { outline: 3px solid var(--mark); outline-offset: 2px; }
`;
