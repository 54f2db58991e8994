/** Why a store cannot do its work at the moment. */
export type StoreFault = 'busy' | 'full' | 'unreachable' | 'unusable' | 'closed';

/** For the caller: no path, no address, no word of the database's own message. */
const texts: Readonly<Record<StoreFault, string>> = {
  busy: 'The store is locked by another program; try again in a moment.',
  full: 'The store has no room left, so nothing was stored. Its keeper must make room on the disk.',
  unreachable: 'The store cannot be reached; try again in a moment.',
  unusable: 'The store cannot be read or written. Its keeper must look after its files or its database.',
  closed: 'The service is stopping; try again in a moment.',
};

/** Thrown when the store cannot do its work at the moment; answered as 503. Its cause is for the log. */
export class StoreUnavailable extends Error {
  override readonly name = 'StoreUnavailable';
  readonly fault: StoreFault;
  constructor(fault: StoreFault, cause?: unknown) {
    super(texts[fault], cause === undefined ? {} : { cause });
    this.fault = fault;
  }
}

/** Thrown for a database that this version of the service cannot use; the message is ready for a terminal. */
export class IncompatibleStore extends Error {
  override readonly name = 'IncompatibleStore';
}

/** Thrown for an owner or a name that cannot be stored; answered as 400. */
export class UnstorableName extends RangeError {
  override readonly name = 'UnstorableName';
}

/** Thrown for a body over the limit; answered as 413. */
export class BodyTooLarge extends RangeError {
  override readonly name = 'BodyTooLarge';
  readonly mostBytes: number;
  constructor(mostBytes: number) {
    super(`the body is larger than ${mostBytes} bytes`);
    this.mostBytes = mostBytes;
  }
}
