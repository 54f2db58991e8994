/** One instruction of a Dockerfile. */
export interface Instruction {
  readonly name: string;
  /** Flags such as `--from=build`, without their dashes. */
  readonly flags: Readonly<Record<string, string>>;
  /** Its words; those of the exec form are as they stand in the JSON. */
  readonly words: readonly string[];
  /** Whether it is in the exec form, a JSON list. */
  readonly isExec: boolean;
}

function instructionFrom(text: string): Instruction {
  const [, name = '', rest = ''] = /^(\S+)\s+(.*)$/su.exec(text) ?? [];
  const parts = rest.split(/\s+/u);
  const count = parts.findIndex((part) => !part.startsWith('--'));
  const flags = Object.fromEntries(
    parts.slice(0, count).map((flag) => {
      const [key = '', value = ''] = flag.slice(2).split(/=(.*)/su);
      return [key, value];
    }),
  );
  const words = parts.slice(count);
  const isList = words[0]?.startsWith('[') ?? false;
  return {
    name: name.toUpperCase(),
    flags,
    words: isList ? (JSON.parse(words.join(' ')) as string[]) : words,
    isExec: isList,
  };
}

/** Reads a Dockerfile: comments go, continued lines are joined. https://docs.docker.com/reference/dockerfile/ */
export function readDockerfile(text: string): readonly Instruction[] {
  return text
    .split('\n')
    .filter((line) => !/^\s*#/u.test(line))
    .join('\n')
    .replaceAll(/\\\s*\n/gu, ' ')
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')
    .map(instructionFrom);
}

/** One stage: its FROM, and what follows. */
export interface Stage {
  readonly from: Instruction;
  readonly name: string | undefined;
  readonly instructions: readonly Instruction[];
}

export function stagesOf(instructions: readonly Instruction[]): readonly Stage[] {
  const stages: { from: Instruction; name: string | undefined; instructions: Instruction[] }[] = [];
  for (const instruction of instructions) {
    if (instruction.name === 'FROM') {
      const [, as, name] = instruction.words;
      stages.push({
        from: instruction,
        name: as?.toUpperCase() === 'AS' ? name : undefined,
        instructions: [],
      });
    } else stages.at(-1)?.instructions.push(instruction);
  }
  return stages;
}

/** The words after a CMD inside a HEALTHCHECK. */
export const healthCommand = ({ words }: Instruction): readonly string[] => {
  const text = words.join(' ').replace(/^CMD\s+/u, '');
  return text.startsWith('[') ? (JSON.parse(text) as string[]) : [];
};

type Rule = (stages: readonly Stage[]) => boolean;

const every = (stages: readonly Stage[], name: string) =>
  stages.flatMap(({ instructions }) => instructions.filter((each) => each.name === name));

const lastOf = (stages: readonly Stage[], name: string) =>
  stages
    .at(-1)
    ?.instructions.filter((each) => each.name === name)
    .at(-1);

const secretName = /PASSWORD|PASSWD|SECRET|TOKEN|CREDENTIAL|PRIVATE|API_?KEY/iu;

const isOrdinary = (user: string | undefined) => user !== undefined && !/^(?:root|0)(?::|$)/u.test(user);

/** In which order the copies and the install of a stage stand: lists of packages, install, everything else. */
function installsBeforeSources({ instructions }: Stage): boolean {
  const at = (test: (each: Instruction) => boolean) => instructions.findIndex(test);
  const install = at(({ name, words }) => name === 'RUN' && words.includes('ci'));
  if (install < 0) return true;
  const sources = at(({ name, words }) => name === 'COPY' && words[0] === '.');
  const lists = at(({ name, words }) => name === 'COPY' && words.includes('package-lock.json'));
  return lists >= 0 && lists < install && (sources < 0 || install < sources);
}

/**
 * What a Dockerfile of ours keeps to. Names in brackets are the rules of a widespread linter for the same, by number:
 * *common practice*.
 */
export const dockerfileRules: Readonly<Record<string, Rule>> = {
  'every base has a version, and none is "latest" (DL3006, DL3007)': (stages) =>
    stages.every(({ from: { words } }) => /^[\w./-]+:(?!latest)[\w.-]*\d[\w.-]*$/u.test(words[0] ?? '')),
  'files are copied, never added (DL3020)': (stages) => every(stages, 'ADD').length === 0,
  'the last user is named, and not root (DL3002)': (stages) => isOrdinary(lastOf(stages, 'USER')?.words[0]),
  'folders to work in are absolute (DL3000), and set before anything is copied (DL3045)': (stages) =>
    stages.every(({ instructions }) => {
      const workdir = instructions.findIndex(({ name }) => name === 'WORKDIR');
      const copy = instructions.findIndex(({ name }) => name === 'COPY');
      return instructions
        .filter(({ name }) => name === 'WORKDIR')
        .every(({ words }) => words[0]?.startsWith('/'))
        ? workdir >= 0 && (copy < 0 || workdir < copy)
        : false;
    }),
  'the last stage has one health check, one entry point and one command, each without a shell (DL3025, DL3057)':
    (stages) =>
      ['HEALTHCHECK', 'ENTRYPOINT', 'CMD'].every((name) => {
        const found = stages.at(-1)?.instructions.filter((each) => each.name === name) ?? [];
        const [first] = found;
        return (
          first !== undefined &&
          found.length === 1 &&
          (name === 'HEALTHCHECK' ? healthCommand(first).length > 0 : first.isExec)
        );
      }),
  'commands of the build need no shell': (stages) => every(stages, 'RUN').every(({ isExec }) => isExec),
  'the last stage runs nothing, so it can be made for any processor': (stages) =>
    stages.at(-1)?.instructions.every(({ name }) => name !== 'RUN') ?? false,
  'stages are told apart by name (DL3024), and only known ones are copied from (DL3022)': (stages) => {
    const names = stages.flatMap(({ name }) => (name === undefined ? [] : [name]));
    const known = new Set(names);
    return (
      known.size === names.length &&
      every(stages, 'COPY').every(({ flags: { from } }) => from === undefined || known.has(from))
    );
  },
  'the last stage takes files from other stages alone, and never a whole folder of sources': (stages) =>
    stages
      .at(-1)
      ?.instructions.filter(({ name }) => name === 'COPY')
      .every(({ flags, words }) => flags.from !== undefined && !words.slice(0, -1).includes('.')) ?? false,
  'packages are installed as locked, before sources are copied, and without their scripts': (stages) =>
    stages.every(installsBeforeSources) &&
    every(stages, 'RUN')
      .filter(({ words }) => words[0] === 'npm')
      .every(({ words }) => words[1] !== 'install' && words.includes('--ignore-scripts')),
  'no secret is set in the image': (stages) =>
    [...every(stages, 'ENV'), ...every(stages, 'ARG')].every(({ words }) =>
      words.every((word) => !secretName.test(word.split('=')[0] ?? '')),
    ),
  'there is no maintainer line (DL4000)': (stages) => every(stages, 'MAINTAINER').length === 0,
  'nothing becomes root again, or installs what is not locked': (stages) =>
    every(stages, 'RUN').every(
      ({ words }) => !words.some((word) => /^(?:sudo|apt|apt-get|apk|curl|wget)$/u.test(word)),
    ),
};

/** Rules that a Dockerfile breaks. */
export function brokenRules(text: string): readonly string[] {
  const stages = stagesOf(readDockerfile(text));
  return Object.entries(dockerfileRules)
    .filter(([, holds]) => !holds(stages))
    .map(([name]) => name);
}
