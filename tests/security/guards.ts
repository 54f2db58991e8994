/** A guard in the source, and how it looks when it is gone. */
export interface Guard {
  /** The number of the item in the OWASP API Security Top 10 (2023) whose test must fail without it. */
  readonly item: number;
  /** What it does, in a few words. */
  readonly what: string;
  readonly file: string;
  /** A text that is there once. */
  readonly find: string;
  readonly replace: string;
}

const guard = (item: number, what: string, file: string, find: string, replace: string): Guard => ({
  item,
  what,
  file,
  find,
  replace,
});

/** Every guard that `npm run guards` takes away, one at a time. */
export const guards: readonly Guard[] = [
  guard(
    1,
    'things belong to one member',
    'src/members/identify.ts',
    'caller: { owner, name',
    "caller: { owner: 'everybody', name",
  ),
  guard(
    1,
    'members see themselves alone',
    'src/members/member-problems.ts',
    "if (name !== member && !scopes.has('admin'))",
    'if (name === undefined)',
  ),
  guard(
    1,
    'a token is revoked as its member’s',
    'src/members/change-tokens.ts',
    '(member !== undefined && member !== token.memberName)',
    'false',
  ),

  guard(
    2,
    'the secret must be right',
    'src/members/identify.ts',
    '!sameHash(row.hash, hashOf(credential.key.secret))',
    'false',
  ),
  guard(
    2,
    'revoked tokens are refused',
    'src/members/member-rows.ts',
    ".where('token.revoked', 'is', null)",
    '',
  ),
  guard(
    2,
    'expired tokens are refused',
    'src/members/member-rows.ts',
    "token('token.expires', '>', now)",
    "token('token.expires', 'is not', null)",
  ),
  guard(2, 'suspended members are refused', 'src/members/identify.ts', ".where('member.active', '=', 1)", ''),
  guard(
    2,
    'guesses are counted',
    'src/sign-in/guesses.ts',
    'found.times.size >= mostGuesses',
    'found.times.size >= 1e9',
  ),
  guard(
    2,
    'only hashes are stored',
    'src/store/secret-hash.ts',
    "createHash('sha256').update(secret).digest('hex')",
    'secret',
  ),
  guard(
    2,
    'secrets in URLs are not logged',
    'src/without-secrets.ts',
    '(\\/shared\\/)[^/#]+',
    '(\\/shared\\/)nothing',
  ),
  guard(
    2,
    'tokens in URLs are not logged',
    'src/without-secrets.ts',
    '.replace(/hemfold_[\\da-f]+_[\\w-]+/giu, hidden)',
    '',
  ),
  guard(
    2,
    'headers are not logged',
    'src/app.ts',
    '      url: withoutSecrets(request.url),',
    '      url: withoutSecrets(request.url), all: (request as { headers?: unknown }).headers,',
  ),

  guard(
    3,
    'a member is set by known names alone',
    'src/members/replies.ts',
    'export const memberWish = z\n  .strictObject({',
    'export const memberWish = z\n  .object({',
  ),
  guard(
    3,
    'a token is set by known names alone',
    'src/members/replies.ts',
    'export const tokenWish = z\n  .strictObject({',
    'export const tokenWish = z\n  .object({',
  ),
  guard(
    3,
    'no hash is among a token’s members',
    'src/members/member-rows.ts',
    '  id: row.id,\n',
    '  id: row.id,\n  ...{ note: row.secret_hash },\n',
  ),
  guard(
    3,
    'names that reach a prototype are refused',
    'src/problem/read-json.ts',
    "new Set(['__proto__'])",
    "new Set([''])",
  ),

  guard(4, 'bodies are bounded', 'src/app.ts', 'bodyLimit: bodyLimitBytes', 'bodyLimit: 64 * bodyLimitBytes'),
  guard(4, 'pages are bounded', 'src/resources/paging.ts', '  .max(mostItemsPerPage)\n', ''),
  guard(
    4,
    'nesting is bounded',
    'src/problem/read-json.ts',
    'const deepestNesting = 64;',
    'const deepestNesting = 500;',
  ),
  guard(
    4,
    'requests are counted by member',
    'src/plugins/rate-limit.ts',
    'keyGenerator: (request) =>\n        request.caller?.proof',
    'keyGenerator: (request) =>\n        request.raw.destroyed',
  ),
  guard(4, 'requests are counted', 'src/plugins/rate-limit.ts', 'max: config.rateLimit', 'max: 1e9'),
  guard(4, 'things are bounded in number', 'src/store/put-item.ts', 'items > limits.items ||', ''),
  guard(
    4,
    'tokens are bounded in number',
    'src/members/change-tokens.ts',
    'alive >= limits.tokens',
    'alive < 0',
  ),
  guard(4, 'members are bounded in number', 'src/members/change-members.ts', 'count >= most', 'count < 0'),

  guard(
    5,
    'scopes are required',
    'src/sign-in/require-caller.ts',
    'if (scopes.has(scope)) return;',
    'return;',
  ),
  guard(
    5,
    'a route that says nothing is for members',
    'src/plugins/callers.ts',
    "needs = 'read' }",
    "needs = 'nothing' }",
  ),
  guard(
    5,
    'the list of members is for admins',
    'routes/v1/members/index.ts',
    "needs: 'admin'",
    "needs: 'read'",
  ),
  guard(5, 'restoring is for admins', 'routes/v1/restore/index.ts', "needs: 'admin'", "needs: 'write'"),
  guard(
    5,
    'a token gives no more than it has',
    'src/members/token-within.ts',
    "missing !== -1 && !caller.scopes.has('admin')",
    'missing < -1',
  ),

  guard(6, 'sign-ins are bounded', 'routes/sign-in/index.ts', ', rateLimit: mostSignIns', ''),
  guard(
    6,
    'signed-in browsers are bounded',
    'src/members/sessions.ts',
    'newest.slice(most - 1)',
    'newest.slice(1e6)',
  ),
  guard(
    6,
    'foreign pages sign nobody in or out',
    'src/sign-in/require-caller.ts',
    'if (isSafe(request)) return;',
    'return;',
  ),
  guard(
    6,
    'foreign pages use no cookie',
    'src/plugins/callers.ts',
    "if (caller.proof?.by !== 'token')",
    'if (!caller.proof)',
  ),
  guard(6, 'restores run alone', 'src/archive/one-at-a-time.ts', 'if (isTaken)', 'if (what === undefined)'),
  guard(
    6,
    'a restore replaces only when told',
    'src/archive/replace-everything.ts',
    'if (!wasEmpty && !replace)',
    'if (wasEmpty === undefined)',
  ),
  guard(
    6,
    'a restored group has somebody to keep it',
    'src/archive/replace-everything.ts',
    'needsAdmin && !(await hasAdmin(change, doing.now))',
    'needsAdmin === undefined',
  ),
  guard(6, 'links are bounded', 'src/store/shares.ts', 'if (alive >= most)', 'if (alive < 0)'),

  guard(
    7,
    'names in specs are not fetched',
    'src/resources/replace-names.ts',
    '  if (names.length === 0) return spec;\n',
    '  for (const { name } of names) await fetch(name).catch(() => undefined);\n  if (names.length === 0) return spec;\n',
  ),

  guard(
    8,
    'nobody frames a page',
    'src/plugins/security-headers.ts',
    "xFrameOptions: { action: 'deny' }",
    'xFrameOptions: false',
  ),
  guard(
    8,
    'no script from elsewhere runs',
    'src/plugins/security-headers.ts',
    `scriptSrc: ["'self'"`,
    `scriptSrc: ["'self'", "'unsafe-inline'"`,
  ),
  guard(
    8,
    'home answers as this machine alone',
    'src/sign-in/this-machine.ts',
    'if (host === undefined || ',
    'if (host !== null || ',
  ),
  guard(
    8,
    'home takes no writes of foreign pages',
    'src/plugins/callers.ts',
    "if (caller.proof?.by !== 'token')",
    "if (caller.proof?.by === 'cookie')",
  ),
  guard(
    8,
    'others are never answered without sign-in',
    'src/config.ts',
    'if (GROUP !== false || isLoopback(HOST)) return;',
    'if (HOST) return;',
  ),
  guard(
    8,
    'faults tell nothing',
    'src/problem/send-problem.ts',
    "plainProblem(500, 'The service failed, and has logged why.')",
    'plainProblem(500, String(message))',
  ),
  guard(
    8,
    'private replies are kept by no cache',
    'src/plugins/private-replies.ts',
    "request.url.startsWith('/v1/')",
    "request.url.startsWith('/none/')",
  ),

  guard(9, 'every route is in the contract', 'routes/v1/me/index.ts', "        tags: ['members'],\n", ''),

  guard(
    10,
    'proxies are trusted only when told',
    'src/app.ts',
    'trustProxy: trustedProxies(config.trustProxy)',
    'trustProxy: true',
  ),
  guard(
    10,
    'a changed file is refused',
    'src/archive/read-archive.ts',
    "line.sha256 !== hash.digest('hex')",
    'line.sha256 === undefined',
  ),
  guard(
    10,
    'a file is read by its schema',
    'src/archive/read-archive.ts',
    'readWith(archiveLine, value)',
    'value as ArchiveLine',
  ),
  guard(
    10,
    'bodies in a file are bounded',
    'src/archive/read-archive.ts',
    'bytes.length > mostBytes',
    'bytes.length < 0',
  ),
  guard(
    10,
    'bodies in a file are read as a request’s',
    'src/archive/read-archive.ts',
    '  asBad(number, () => readJson(bytes));\n',
    '',
  ),
  guard(
    10,
    'lines in a file belong together',
    'src/archive/read-archive.ts',
    'if (fault !== undefined) throw new BadArchive(number, fault);',
    '',
  ),
];
