/*
 * Draws random specs until one breaks a rule of the drawing, and shows the smallest such spec it finds:
 *
 *   npm run fuzz -- --runs 20000 --seed 7
 *
 * Half of the specs are right, and must be drawn by the rules. The others have mistakes in them: they may be
 * refused as malformed or as impossible to fold, and in no other way.
 */
import { parseArgs } from 'node:util';
import fc from 'fast-check';
import { folderSpec } from '../../shared/spec/folder-spec.ts';
import { svgOfFolder } from '../../src/folders/svg-of-folder.ts';
import { CannotBeFolded } from '../../src/problem/cannot-be-folded.ts';
import { drawingRules } from '../support/drawing-rules.ts';
import { draw } from '../support/drawn.ts';
import { specs } from '../support/specs.ts';
import { spell } from '../support/spelling.ts';
import { roughSpecs } from './rough-specs.ts';

const { values } = parseArgs({
  options: { runs: { type: 'string', default: '2000' }, seed: { type: 'string' } },
});
const numRuns = wholeNumber('runs', values.runs);
const seed = wholeNumber('seed', values.seed ?? `${Math.floor(Math.random() * 2 ** 31)}`);
const tally = { drawn: 0, refused: 0, malformed: 0 };

function wholeNumber(name: string, text: string): number {
  const value = Number(text);
  if (!Number.isInteger(value) || value < 0) throw new Error(`--${name} must be a whole number`);
  return value;
}

const say = (line: string): boolean => process.stdout.write(`${line}\n`);

function inspect(raw: unknown): void {
  if (!folderSpec.safeParse(raw).success) {
    tally.malformed++;
    return;
  }
  const drawn = draw(raw);
  if (!drawn) {
    expectRefusal(raw);
    tally.refused++;
    return;
  }
  tally.drawn++;
  for (const rule of drawingRules) {
    const fault = rule.broken(drawn);
    if (fault !== undefined) throw new Error(`${rule.name}: ${fault}`);
  }
}

function expectRefusal(raw: unknown): void {
  try {
    svgOfFolder(folderSpec.parse(raw));
  } catch (error) {
    if (error instanceof CannotBeFolded) return;
    throw error;
  }
  throw new Error('a spec was refused by the solver and drawn all the same');
}

const right = specs.map(({ spec, spelling }) => spell(spec, spelling));

say(`seed ${seed}, ${numRuns} runs`);
const result = fc.check(fc.property(fc.oneof(right, roughSpecs), inspect), { numRuns, seed });
say(`${tally.drawn} drawn, ${tally.refused} refused, ${tally.malformed} malformed`);
if (result.failed) {
  const cause: unknown = result.errorInstance;
  say(`run ${result.numRuns} failed, made smaller ${result.numShrinks} times:`);
  say(JSON.stringify(result.counterexample?.[0]));
  say(cause instanceof Error ? (cause.stack ?? cause.message) : String(cause));
  process.exitCode = 1;
}
