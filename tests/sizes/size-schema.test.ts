import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { sizes, sizesOfKind } from '../../shared/sizes/catalogue.ts';
import { showSize, sizeId, sizesReply } from '../../shared/sizes/size-schema.ts';

const refusal = (schema: z.ZodType, input: unknown) => {
  const issue = schema.safeParse(input).error?.issues[0];
  return issue && [issue.message, issue.code === 'custom' ? issue.params?.remedy : undefined];
};

describe('a size id', () => {
  it('may be any published one', () => {
    for (const { id } of sizes) expect(sizeId().parse(id)).toBe(id);
  });

  it('is refused with the nearest ids when nothing is published under it', () => {
    expect(refusal(sizeId('envelope'), 'iso-c66')).toEqual([
      '"iso-c66" is not the id of a published size',
      'did you mean "iso-c6"? GET /v1/sizes lists all',
    ]);
    expect(refusal(sizeId(), 'a6')).toEqual([
      '"a6" is not the id of a published size',
      'did you mean "iso-a6" or "us-a6" or "us-a6-envelope"? GET /v1/sizes lists all',
    ]);
  });

  it('is refused with a way out when nothing comes near', () => {
    expect(refusal(sizeId(), 'x'.repeat(500))).toEqual([
      `"${'x'.repeat(40)}…" is not the id of a published size`,
      'choose an id from GET /v1/sizes, or give width and height',
    ]);
  });

  it('is refused where the size is of another kind, with the other half of its pair', () => {
    expect(refusal(sizeId('card'), 'us-a2-envelope')).toEqual([
      '"us-a2-envelope" is an envelope, not a card',
      'did you mean "us-a2"? GET /v1/sizes lists all',
    ]);
    expect(refusal(sizeId('envelope'), 'iso-a6')).toEqual([
      '"iso-a6" is a card and a sheet, not an envelope',
      'did you mean "iso-c6"? GET /v1/sizes lists all',
    ]);
  });

  it('names its place in a spec', () => {
    const spec = z.strictObject({ item: z.strictObject({ size: sizeId('card') }) });
    expect(spec.safeParse({ item: { size: 'nope' } }).error?.issues[0]?.path).toEqual(['item', 'size']);
  });

  it.each([5, null, undefined, ['iso-a6'], 'constructor', '__proto__'])('is not %j', (input) => {
    expect(sizeId().safeParse(input).success).toBe(false);
  });

  it('lists the ids in its JSON Schema', () => {
    expect(z.toJSONSchema(sizeId('card'))).toMatchObject({
      type: 'string',
      enum: sizesOfKind('card').map(({ id }) => id),
    });
    expect(z.toJSONSchema(sizeId()).enum).toHaveLength(sizes.length);
  });
});

describe('the reply of GET /v1/sizes', () => {
  it('holds every size, in both systems', () => {
    const reply = { sizes: sizes.map(showSize) };
    expect(sizesReply.parse(JSON.parse(JSON.stringify(reply)))).toEqual(reply);
    expect(reply.sizes.find(({ id }) => id === 'us-a2-envelope')).toEqual({
      id: 'us-a2-envelope',
      title: 'US A2 envelope',
      kinds: ['envelope'],
      width: { mm: 111.125, inch: '4 3/8' },
      height: { mm: 146.05, inch: '5 3/4' },
      measure: 'inch',
      source: 'IEEE-ISTO PWG 5101.1, na_a2',
      authority: 'standard',
      takes: ['us-a2'],
    });
  });

  it('would notice a member that is not in the contract', () => {
    const [first] = sizes.map(showSize);
    expect(sizesReply.safeParse({ sizes: [{ ...first, area: 1 }] }).success).toBe(false);
  });
});
