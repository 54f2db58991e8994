import { escaped } from '../escaped.ts';
import type { Caller, Scope } from '../members/caller.ts';

export const stylePath = '/sign-in/style.css';

/** @param title and content as HTML */
const page = (title: string, content: string) => `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${title} – hemfold</title>
<link rel="stylesheet" href="${stylePath}">
</head>
<body>
<main>
<p class="service">hemfold</p>
<h1>${title}</h1>
${content}
</main>
</body>
</html>
`;

/** The page on which a member pastes a token. @param trouble why the last try failed */
export function signInPage(trouble?: string): string {
  const alert =
    trouble === undefined ? '' : `<p class="trouble" id="trouble" role="alert">${escaped(trouble)}</p>\n`;
  const described = trouble === undefined ? 'about' : 'trouble about';
  const invalid = trouble === undefined ? '' : ' aria-invalid="true"';
  return page(
    'Sign in',
    `${alert}<form method="post" action="/sign-in">
<label for="token">Your token</label>
<input id="token" name="token" type="password" autocomplete="current-password" autocapitalize="none" spellcheck="false" required autofocus aria-describedby="${described}"${invalid}>
<p id="about">It begins with <span class="sample">hemfold_</span> and was shown once, when it was made. If you have none, or lost yours, ask whoever keeps the group.</p>
<button type="submit">Sign in</button>
</form>
<p>This browser then stays signed in for up to 30 days. On a machine that you share, sign out when you leave. Signing in sets one cookie, which nothing else uses.</p>`,
  );
}

const may: Readonly<Record<Scope, string>> = {
  read: 'plan and read',
  write: 'keep and remove your things',
  admin: 'keep the group',
};

/** The page of a browser that is signed in. */
export function signedInPage({ name, scopes }: Caller): string {
  const can = [...scopes].map((scope) => `<li>${may[scope]}</li>`).join('\n');
  return page(
    'You are signed in',
    `<p>As <strong>${escaped(name)}</strong>. With this token you may:</p>
<ul>
${can}
</ul>
<form method="post" action="/sign-out">
<button type="submit">Sign out</button>
</form>
<p><a href="/">Make a folder</a></p>
<p><a href="/docs">What programs can ask</a></p>`,
  );
}
