import { createHash } from 'node:crypto';
import type { Block, Guide, GuideStep, Section } from '../../shared/guide/guide.ts';
import type { Picture } from '../../shared/views/picture.ts';
import { escaped } from '../escaped.ts';
import { writePicture } from '../svg/write-picture.ts';
import { guideStyle } from './guide-style.ts';

/** The policy under which a guide is shown: its own style and nothing else. */
export const guideContentPolicy = `default-src 'none'; style-src 'sha256-${createHash('sha256').update(guideStyle).digest('base64')}'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'`;

/**
 * A guide as one HTML page that needs nothing else: pictures are in it, and it prints well.
 * @param print `large` for text of at least 16 points
 */
export function writeGuideHtml(guide: Guide, print: 'standard' | 'large'): string {
  const sections = guide.sections.map(sectionHtml).join('\n');
  const contents = guide.sections
    .map(({ id, title }) => `<li><a href="#${id}">${escaped(title)}</a></li>`)
    .join('');
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(guide.title)}</title>
<style>${guideStyle}</style>
</head>
<body class="${print}">
<header>
<h1>${escaped(guide.title)}</h1>
<p>${escaped(guide.summary)}</p>
<nav aria-label="Contents"><ol>${contents}</ol></nav>
</header>
<main>
${sections}
</main>
</body>
</html>
`;
}

const sectionHtml = ({ id, title, blocks }: Section): string =>
  `<section id="${id}" aria-labelledby="${id}-title">
<h2 id="${id}-title">${escaped(title)}</h2>
${blocks.map(blockHtml).join('\n')}
</section>`;

function blockHtml(block: Block): string {
  switch (block.kind) {
    case 'text':
      return `<p>${escaped(block.text)}</p>`;
    case 'list':
      return `<ul>${block.items.map((item) => `<li>${escaped(item)}</li>`).join('')}</ul>`;
    case 'facts':
      return `<dl>${block.facts.map(([term, value]) => `<div><dt>${escaped(term)}</dt><dd>${escaped(value)}</dd></div>`).join('')}</dl>`;
    case 'table':
      return tableHtml(block);
    case 'picture':
      return `<figure>${svgOf(block.picture)}<figcaption>${escaped(block.caption)}</figcaption></figure>`;
    case 'steps':
      return `<ol class="steps">${block.steps.map(stepHtml).join('')}</ol>`;
  }
}

const tableHtml = ({ caption, head, rows }: Extract<Block, { kind: 'table' }>): string => {
  const cells = ([first = '', ...rest]: readonly string[]) =>
    `<tr><th scope="row">${escaped(first)}</th>${rest.map((cell) => `<td>${escaped(cell)}</td>`).join('')}</tr>`;
  const columns = head.map((title) => `<th scope="col">${escaped(title)}</th>`).join('');
  return `<div class="table" role="region" aria-label="${escaped(caption)}" tabindex="0"><table><caption>${escaped(caption)}</caption><thead><tr>${columns}</tr></thead><tbody>${rows.map(cells).join('')}</tbody></table></div>`;
};

const stepHtml = ({ words, faceUp, picture }: GuideStep): string =>
  `<li><p>${escaped(words)}${faceUp === undefined ? '' : ` <span class="face">${escaped(faceUp)}.</span>`}</p>${svgOf(picture)}</li>`;

/** The picture within a page: no XML declaration, and as wide as there is room. */
const svgOf = (picture: Picture): string => writePicture(picture).replace(/^<\?xml[^>]*\?>\s*/u, '');
