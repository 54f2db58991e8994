import { describe, expect, test } from 'vitest';
import { InvalidConfig, isLoopback, readConfig } from '../../src/config.ts';

describe('readConfig', () => {
  test('needs nothing: this machine alone, no members, no limit, no proxy', () => {
    expect(readConfig({})).toEqual({
      host: '127.0.0.1',
      port: 8788,
      dataDir: './data',
      group: false,
      logLevel: 'info',
      rateLimit: 0,
      restoreBytes: 64 * 1024 * 1024,
      trustProxy: false,
    });
  });

  test('takes an empty variable as not set', () => {
    expect(readConfig({ PORT: '', HOST: '  ' })).toEqual(readConfig({}));
  });

  test.each([
    ['127.0.0.1', 0],
    ['127.8.8.8', 0],
    ['localhost', 0],
    ['::1', 0],
    ['[::1]', 0],
    ['0.0.0.0', 600],
    ['::', 600],
    ['10.0.0.5', 600],
    ['folders.example', 600],
  ])('on %s the rate limit is %i unless said otherwise', (host, limit) => {
    expect(readConfig({ HOST: host }).rateLimit).toBe(limit);
    expect(isLoopback(host)).toBe(limit === 0);
    expect(readConfig({ HOST: host }).group).toBe(limit > 0);
    expect(readConfig({ HOST: host, RATE_LIMIT: '7' }).rateLimit).toBe(7);
  });

  test('a group may be on loopback, behind a proxy, and then has a limit', () => {
    expect(readConfig({ GROUP: 'true' })).toMatchObject({ host: '127.0.0.1', group: true, rateLimit: 600 });
  });

  test.each(['0.0.0.0', '::', '10.0.0.5', 'folders.example'])('%s is never without sign-in', (host) => {
    const read = () => readConfig({ HOST: host, GROUP: 'false' });
    expect(read).toThrow(`  GROUP: "false" cannot hold while others can reach HOST=${host}`);
    expect(read).toThrow('give true, or leave it out');
  });

  test.each([
    ['true', true],
    ['false', false],
    ['1', 1],
    ['10.0.0.0/8, ::1', ['10.0.0.0/8', '::1']],
    ['loopback', ['loopback']],
  ])('reads TRUST_PROXY %s', (text, value) => {
    expect(readConfig({ TRUST_PROXY: text }).trustProxy).toEqual(value);
  });

  test.each([
    ['PORT', '70000', 'give a number such as 8788'],
    ['PORT', '87.5', 'give a number such as 8788'],
    ['PORT', '0x10', 'give a number such as 8788'],
    ['HOST', 'http://localhost', 'give an address'],
    ['LOG_LEVEL', 'loud', 'use one of: fatal'],
    ['RATE_LIMIT', '-1', '0 for no limit'],
    ['GROUP', 'perhaps', 'give true, or leave it out'],
    ['RESTORE_LIMIT', '0', 'give a number such as 64'],
    ['TRUST_PROXY', '10.0.0.0/99', 'give the addresses of your proxies'],
    ['TRUST_PROXY', 'yes', 'give the addresses of your proxies'],
  ])('refuses %s=%s and says what to do', (name, value, remedy) => {
    const read = () => readConfig({ [name]: value });
    expect(read).toThrow(InvalidConfig);
    expect(read).toThrow(`  ${name}: "${value}" is `);
    expect(read).toThrow(remedy);
  });

  test('reports every bad variable at once', () => {
    expect(() => readConfig({ PORT: 'x', LOG_LEVEL: 'y' })).toThrow(/PORT[\s\S]*LOG_LEVEL/);
  });
});
