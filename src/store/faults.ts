import type { StoreFault } from './store-errors.ts';

/** SQLite's primary result codes, sqlite.org/rescode.html. */
const sqliteFaults: Readonly<Record<number, StoreFault>> = {
  5: 'busy', // SQLITE_BUSY
  6: 'busy', // SQLITE_LOCKED
  7: 'unusable', // SQLITE_NOMEM
  8: 'unusable', // SQLITE_READONLY
  10: 'unusable', // SQLITE_IOERR
  11: 'unusable', // SQLITE_CORRUPT
  13: 'full', // SQLITE_FULL
  14: 'unusable', // SQLITE_CANTOPEN
  15: 'busy', // SQLITE_PROTOCOL: others kept the log locked
  26: 'unusable', // SQLITE_NOTADB
};

/** SQLSTATE codes and their classes, PostgreSQL documentation, appendix A. */
const sqlStateFaults: Readonly<Record<string, StoreFault>> = {
  '08': 'unreachable', // connection exception
  25006: 'unusable', // read-only transaction: a standby
  28: 'unreachable', // invalid authorization
  '3D': 'unreachable', // no such database
  '40001': 'busy', // serialization failure
  '40P01': 'busy', // deadlock
  42501: 'unusable', // insufficient privilege
  53: 'unreachable', // insufficient resources, such as too many connections
  53100: 'full', // disk full
  '55P03': 'busy', // lock not available within lock_timeout
  57014: 'busy', // cancelled, by statement_timeout
  '57P': 'unreachable', // shutdown or start of the server
  58: 'unusable', // system error
  XX001: 'unusable', // damaged data
  XX002: 'unusable', // damaged index
};

const systemFaults: Readonly<Record<string, StoreFault>> = {
  ENOSPC: 'full',
  EDQUOT: 'full',
  EACCES: 'unusable',
  EEXIST: 'unusable',
  EFBIG: 'unusable',
  EIO: 'unusable',
  EISDIR: 'unusable',
  EMFILE: 'unusable',
  ENFILE: 'unusable',
  ENOENT: 'unusable',
  ENOTDIR: 'unusable',
  EPERM: 'unusable',
  EROFS: 'unusable',
  EAI_AGAIN: 'unreachable',
  ECONNABORTED: 'unreachable',
  ECONNREFUSED: 'unreachable',
  ECONNRESET: 'unreachable',
  EHOSTUNREACH: 'unreachable',
  ENETUNREACH: 'unreachable',
  ENOTFOUND: 'unreachable',
  EPIPE: 'unreachable',
  ETIMEDOUT: 'unreachable',
};

/** What `pg` says of a broken connection, without a code. */
const brokenConnection =
  /^(?:Connection terminated|timeout exceeded when trying to connect|Query read timeout|Client has encountered a connection error|Client was closed|Postgres connection has been discarded)/u;

interface KnownError {
  readonly code?: unknown;
  readonly errcode?: unknown;
  readonly syscall?: unknown;
  readonly message?: unknown;
}

/** What an error of a database or of the system says about the store; undefined for any other error. */
export function faultOf(error: unknown): StoreFault | undefined {
  const { code, errcode, syscall, message } = (error ?? {}) as KnownError;
  if (code === 'ERR_SQLITE_ERROR')
    return typeof errcode === 'number' ? sqliteFaults[errcode & 0xff] : undefined;
  if (syscall === 'connect') return 'unreachable'; // a socket that is not there is no missing file
  if (typeof code === 'string')
    return (
      systemFaults[code] ??
      (code.length === 5
        ? (sqlStateFaults[code] ?? sqlStateFaults[code.slice(0, 3)] ?? sqlStateFaults[code.slice(0, 2)])
        : undefined)
    );
  return brokenConnection.test(String(message)) ? 'unreachable' : undefined;
}
