import { DatabaseSync } from 'node:sqlite';
import { describe, expect, test } from 'vitest';
import { faultOf } from '../../../src/store/faults.ts';
import { StoreUnavailable } from '../../../src/store/store-errors.ts';

const failureOf = (work: () => unknown): unknown => {
  try {
    return work();
  } catch (error) {
    return error;
  }
};

describe('faultOf', () => {
  test('knows a SQLite file that may not grow', () => {
    const database = new DatabaseSync(':memory:');
    database.exec('create table filled (text); pragma max_page_count = 5');
    const insert = database.prepare('insert into filled values (?)');
    expect(faultOf(failureOf(() => insert.run('x'.repeat(100_000))))).toBe('full');
  });

  test('takes a mistake in SQL as what it is', () => {
    const database = new DatabaseSync(':memory:');
    expect(faultOf(failureOf(() => database.exec('selekt')))).toBeUndefined();
    database.exec('create table once (name primary key); insert into once values (1)');
    expect(faultOf(failureOf(() => database.exec('insert into once values (1)')))).toBeUndefined();
  });

  // SQLSTATE: PostgreSQL documentation, appendix A
  test.each([
    ['53100', 'full'],
    ['53300', 'unreachable'],
    ['57P01', 'unreachable'],
    ['57014', 'busy'],
    ['40001', 'busy'],
    ['40P01', 'busy'],
    ['08006', 'unreachable'],
    ['28P01', 'unreachable'],
    ['25006', 'unusable'],
    ['ENOSPC', 'full'],
    ['ECONNREFUSED', 'unreachable'],
    ['EROFS', 'unusable'],
    ['23505', undefined],
    ['42601', undefined],
    ['42P01', undefined],
    ['22021', undefined],
    ['ERR_INVALID_ARG_TYPE', undefined],
  ])('takes the code %s as %s', (code, fault) => {
    expect(faultOf(Object.assign(new Error('some text'), { code }))).toBe(fault);
  });

  test('takes anything else as none', () => {
    for (const error of [undefined, null, 'text', 5, {}, new Error('no'), new StoreUnavailable('busy')])
      expect(faultOf(error)).toBeUndefined();
  });
});

describe('StoreUnavailable', () => {
  test('keeps the cause for the log, out of its text', () => {
    const cause = new Error('connect ECONNREFUSED 10.0.0.5:5432');
    const error = new StoreUnavailable('unreachable', cause);
    expect(error.cause).toBe(cause);
    expect(error.message).not.toContain('10.0.0.5');
  });
});
