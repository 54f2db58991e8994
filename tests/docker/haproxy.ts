import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { mkdir, writeFile } from 'node:fs/promises';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { expect } from 'vitest';
import { projectFolder, type Run, start } from '../src/run-program.ts';

/** Debian's package `haproxy`; its folder is in the path of root alone. */
export const haproxy = ['/usr/sbin/haproxy', '/usr/local/sbin/haproxy'].find((file) => existsSync(file));

/** Ports that nothing listens on just now. */
export async function freePorts(count: number): Promise<readonly number[]> {
  const servers = Array.from({ length: count }, () => createServer());
  const ports = await Promise.all(
    servers.map(
      (server) =>
        new Promise<number>((resolve) => {
          server.listen(0, '127.0.0.1', () => {
            const address = server.address();
            resolve(typeof address === 'object' && address ? address.port : 0);
          });
        }),
    ),
  );
  await Promise.all(servers.map((server) => new Promise((resolve) => server.close(resolve))));
  return ports;
}

/** A self-signed certificate for this machine, as openssl makes it. */
export async function makeCertificate(folder: string): Promise<string> {
  const [key, certificate] = [join(folder, 'key.pem'), join(folder, 'certificate.pem')];
  const made = spawnSync(
    'openssl',
    [
      ...[
        'req',
        '-x509',
        '-newkey',
        'ec',
        '-pkeyopt',
        'ec_paramgen_curve:prime256v1',
        '-noenc',
        '-days',
        '2',
      ],
      ...['-subj', '/CN=localhost', '-addext', 'subjectAltName=DNS:localhost,IP:127.0.0.1'],
      ...['-keyout', key, '-out', certificate],
    ],
    { encoding: 'utf8' },
  );
  if (made.status !== 0) throw new Error(made.stderr);
  return certificate;
}

export interface Proxy extends Run {
  readonly http: string;
  readonly https: string;
}

/** The proxy as docker/compose.postgres.yaml starts it, in front of two services. */
export async function startProxy(
  folder: string,
  { one, two, pem }: { readonly one: string; readonly two: string; readonly pem: string },
): Promise<Proxy> {
  const certificates = join(folder, 'certificates');
  await mkdir(certificates);
  await writeFile(join(certificates, 'hemfold.pem'), pem);
  const [http = 0, https = 0] = await freePorts(2);
  const run = start(haproxy ?? 'haproxy', ['-db', '-f', join(projectFolder, 'docker/haproxy.cfg')], {
    env: {
      CERTIFICATES: certificates,
      HTTP_PORT: String(http),
      HTTPS_PORT: String(https),
      HEMFOLD_ONE: new URL(one).host,
      HEMFOLD_TWO: new URL(two).host,
    },
  });
  const answer = () =>
    fetch(`http://127.0.0.1:${http}/`, { redirect: 'manual' }).then(({ status }) => status, String);
  await expect.poll(answer, { timeout: 30_000 }).toBe(308);
  return { ...run, http: `http://127.0.0.1:${http}`, https: `https://localhost:${https}` };
}
