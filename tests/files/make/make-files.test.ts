import { unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { carriedOut, type FileJob, makeFiles, type Progress, Stopped } from '../../../src/files';
import { openProject, saveProject, withLastPrint } from '../../../src/project';
import { draftWith } from '../drafts';
import { printFont } from '../print-font';

const date = new Date('2026-11-24T12:34:56Z');
const options = { font: printFont(), date };
const one: FileJob = { name: 'One', draft: draftWith() };
const two: FileJob = { name: 'Two', draft: draftWith({ body: { label: 'Body 2', hipGirth: 1090 } }) };

const make = (jobs: readonly FileJob[], kinds: Parameters<typeof makeFiles>[1]) =>
  carriedOut(makeFiles(jobs, kinds, options));
const names = (files: readonly { readonly name: string }[]) => files.map(({ name }) => name);
const bytesOf = (content: Uint8Array | string) =>
  typeof content === 'string' ? new TextEncoder().encode(content) : content;

describe('everything in one ZIP', () => {
  test('holds the project with what is printed of it, and every other file as it is written beside it', async () => {
    const files = await make([one], 'all');
    const zip = files.at(-1);
    expect(zip?.name).toBe('One.zip');
    const inside = unzipSync(bytesOf(zip?.content ?? ''));
    const { 'One.legwork.json': project, ...others } = inside;
    expect(Object.keys(others)).toEqual(names(files.slice(0, -1)));
    for (const { name, content } of files.slice(0, -1))
      expect(Buffer.compare(inside[name] ?? new Uint8Array(), bytesOf(content))).toBe(0);
    const opened = openProject(Buffer.from(project ?? []).toString());
    expect(opened.ok && saveProject(opened.value)).toBe(saveProject(withLastPrint(one.draft, date)));
  });

  test('is the same to the byte wherever it is the same day, and asks for nothing else to be written', async () => {
    const zone = process.env.TZ;
    const zips: Uint8Array[] = [];
    try {
      for (const there of ['UTC', 'Asia/Tokyo', 'America/New_York']) {
        process.env.TZ = there;
        const files = await make([one], ['zip']);
        expect(names(files)).toEqual(['One.zip']);
        zips.push(bytesOf(files[0]?.content ?? ''));
      }
    } finally {
      if (zone === undefined) delete process.env.TZ;
      else process.env.TZ = zone;
    }
    const [first, ...others] = zips.map((zip) => Buffer.from(zip));
    expect(others.map((zip) => zip.equals(first ?? Buffer.alloc(0)))).toEqual([true, true]);
  });

  test('keeps several projects apart in folders, and what is theirs together beside them', async () => {
    const [zip] = await make([one, two], ['zip']);
    const inside = Object.keys(unzipSync(bytesOf(zip?.content ?? '')));
    expect(zip?.name).toBe('One-and-1-more.zip');
    expect(inside).toEqual(
      expect.arrayContaining(['One/One.pdf', 'Two/Two.legwork.json', 'One-and-1-more.nested.svg']),
    );
    expect(new Set(inside).size).toBe(inside.length);
  });
});

describe('long work', () => {
  test('can be stopped between two sheets, and makes nothing then', async () => {
    const stop = new AbortController();
    const seen: Progress[] = [];
    const work = carriedOut(makeFiles([one, two], 'all', options), {
      signal: stop.signal,
      onProgress: (progress) => {
        seen.push(progress);
        if (progress.doing === 'One.pdf, sheet C2') stop.abort();
      },
    });
    await expect(work).rejects.toBeInstanceOf(Stopped);
    expect(seen.at(-1)?.doing).toBe('One.pdf, sheet C2');
  });

  test('a nest of one, or of more than can be told apart, is refused with a sentence', async () => {
    await expect(make([one], ['nested'])).rejects.toThrow(/--files: "nested": .*two projects or more/);
    const many = Array.from({ length: 13 }, (_, i) => ({ ...one, name: `${i}` }));
    await expect(make(many, ['nested'])).rejects.toThrow(/at most 12 bodies .*; these are 13/);
  });
});
