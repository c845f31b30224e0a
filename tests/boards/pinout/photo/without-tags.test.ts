import { describe, expect, it } from 'vitest';
import { readHead } from '../../../../boards/pinout/photo/picture-head';
import { withoutTags } from '../../../../boards/pinout/photo/without-tags';
import { jpegHead, jpegWithTags, TAGS } from './picture-files';

describe('a JPEG without its tags', () => {
  const tagged = jpegWithTags(400, 300);

  it.each(Object.entries(TAGS))('has no %s', (_, tags) => {
    const bare = Buffer.from(withoutTags(tagged));
    for (const tag of tags) {
      expect(tagged.includes(tag), tag).toBe(true);
      expect(bare.includes(tag), tag).toBe(false);
    }
  });

  it('is the same picture: exactly the file as it would be without them', () => {
    expect(Buffer.from(withoutTags(tagged))).toEqual(jpegHead(400, 300));
    expect(Buffer.from(withoutTags(jpegHead(400, 300)))).toEqual(jpegHead(400, 300));
    expect(readHead(withoutTags(tagged))).toEqual({
      ok: true,
      value: { type: 'image/jpeg', kind: 'JPEG', widthPx: 400, heightPx: 300 },
    });
  });
});
