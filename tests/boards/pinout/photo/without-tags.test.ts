import { describe, expect, it } from 'vitest';
import { readHead } from '../../../../boards/pinout/photo/picture-head';
import { withoutTags } from '../../../../boards/pinout/photo/without-tags';
import { jpegHead } from './picture-files';

describe('a JPEG without its tags', () => {
  const tagged = Buffer.concat([
    jpegHead(400, 300, 6).subarray(0, 2),
    segment(0xfe, 'taken in the study'),
    segment(0xe2, 'ICC_PROFILE\0\x01\x01'),
    segment(0xe1, 'http://ns.adobe.com/xap/1.0/\0<x:xmpmeta/>'),
    jpegHead(400, 300, 6).subarray(2),
  ]);

  // Exif 2.32 and XMP: what a camera writes of place, owner and serial number stands in these segments.
  it.each([
    ['Exif, and with it no place on the globe', ['Exif', 'GPS']],
    ['XMP', ['xap', 'xmp']],
    ['colour profile', ['ICC']],
    ['comment', ['study']],
  ])('has no %s', (_, tags) => {
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

function segment(marker: number, text: string): Buffer {
  const data = Buffer.from(text, 'latin1');
  const head = Buffer.from([0xff, marker, 0, 0]);
  head.writeUInt16BE(data.length + 2, 2);
  return Buffer.concat([head, data]);
}
