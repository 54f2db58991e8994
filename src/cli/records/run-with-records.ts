import { InvalidConfig, readConfig } from '../../config.ts';
import { openRecords, type Records } from '../../records.ts';
import { keepersTask } from '../../store/open-at-start.ts';
import { StoreUnavailable } from '../../store/store-errors.ts';
import { CommandFailed } from '../read-spec.ts';
import type { ExitCode } from '../run-spec-command.ts';

/** Thrown by work that was understood and is refused; the message is ready for a terminal. */
export class Refused extends Error {
  override readonly name = 'Refused';
}

/** Where a command writes. */
export interface Output {
  /** Standard output. */
  readonly show: (text: string) => void;
  /** Standard error. */
  readonly report: (text: string) => void;
}

/** What a command does with the records. @throws {Refused} @throws {CommandFailed} */
export type RecordsWork = (records: Records, output: Output) => Promise<void>;

/** Opens the records that the settings name, works on them, and closes them. */
export async function runWithRecords(work: RecordsWork, output: Output): Promise<ExitCode> {
  try {
    const config = readConfig(process.env);
    const records = openRecords(config, () => new Date());
    try {
      await work(records, output);
    } catch (error) {
      const task = keepersTask(error, config);
      throw task === undefined ? error : new CommandFailed(task);
    } finally {
      await records.close();
    }
    return 0;
  } catch (error) {
    if (error instanceof Refused || error instanceof InvalidConfig) {
      output.report(`${error.message.trimEnd()}\n`);
      return 2;
    }
    if (!(error instanceof CommandFailed || error instanceof StoreUnavailable)) throw error;
    output.report(`${error.message}\n`);
    return 1;
  }
}
