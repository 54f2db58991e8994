/** How the maker's sheet looks on a screen, light or dark, narrow or wide, and on paper. */
export const guideStyle = `
:root { color-scheme: light dark; --ink: #1c1a17; --paper: #fffdf8; --line: #8a8377; --soft: #f1ece1; --link: #00527a; }
@media (prefers-color-scheme: dark) { :root { --ink: #f3efe6; --paper: #1d1b18; --line: #948c7f; --soft: #2b2824; --link: #8ecbf0; } }
* { box-sizing: border-box; }
body { margin: 0 auto; max-width: 62rem; padding: 1rem; background: var(--paper); color: var(--ink); font: 1rem/1.5 system-ui, sans-serif; }
body.large { font-size: 1.375rem; }
h1 { font-size: 1.8em; line-height: 1.2; margin: 0.4em 0; }
h2 { font-size: 1.3em; margin: 1.6em 0 0.4em; border-bottom: 2px solid var(--line); }
a { color: var(--link); }
nav ol { columns: 14rem; padding-left: 1.4em; }
dl > div { display: grid; grid-template-columns: minmax(8rem, 14rem) 1fr; gap: 0.2em 1em; }
dt { font-weight: 600; }
dd { margin: 0; overflow-wrap: anywhere; }
figure { margin: 1em 0; }
figcaption, .face { font-size: 0.9em; }
.face { white-space: nowrap; border-left: 0.25em solid var(--line); padding-left: 0.4em; }
svg { display: block; max-width: 100%; height: auto; background: #ffffff; border: 1px solid var(--line); color: #000000; }
.table { overflow-x: auto; }
.table:focus-visible, a:focus-visible { outline: 3px solid var(--link); outline-offset: 2px; }
table { border-collapse: collapse; margin: 0.5em 0; width: 100%; font-variant-numeric: tabular-nums; }
caption { text-align: left; font-weight: 600; padding: 0.3em 0; }
th, td { border: 1px solid var(--line); padding: 0.25em 0.5em; text-align: left; vertical-align: top; }
thead th { background: var(--soft); }
.steps { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(100%, 19em), 1fr)); gap: 1.2em 1.6em; padding-left: 1.6em; }
.steps > li { break-inside: avoid; }
.steps p { margin: 0 0 0.4em; }
@media (max-width: 30rem) { dl > div { grid-template-columns: 1fr; } }
@media print {
  :root { --ink: #000000; --paper: #ffffff; --line: #777777; --soft: #eeeeee; }
  body { max-width: none; padding: 0; font-size: 11pt; }
  body.large { font-size: 16pt; }
  nav { display: none; }
  h2 { break-after: avoid; }
  figure, tr, .steps > li { break-inside: avoid; }
  .table { overflow: visible; }
}
`;
