import { deflateRawSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { draft, exampleProject, openProject, type Project } from '../../src/project';
import { printPhrase } from '../../src/words';
import { projectFromHash, projectLink, stationFromHash } from '../../src/workbench/shelf/link';

const PAGE = 'https://example.org/legwork/';
const linkOf = async (project: Project) => {
  const link = await projectLink(project, 'leg', PAGE);
  if (!link.ok) throw new Error('too long');
  return link.value;
};

const textOf = async (hash: string) => {
  const text = await projectFromHash(hash);
  if (!text?.ok) throw new Error('no text');
  return text.value;
};
const sentenceOf = async (hash: string) => {
  const text = await projectFromHash(hash);
  if (!text || text.ok) throw new Error('not refused');
  return text.problems.map(({ phrase }) => printPhrase(phrase, 'cm')).join(' ');
};

describe('a link', () => {
  it('gives back the whole project, unknown fields and all', async () => {
    const project = { ...exampleProject, name: 'Für „Ütz“, 40⅛', notes: { from: 'class' } };
    const link = await linkOf(project);
    expect(link.startsWith(`${PAGE}#station=leg&project=`)).toBe(true);
    expect(link).toMatch(/project=[\w-]+$/);
    expect(stationFromHash(new URL(link).hash)).toBe('leg');
    const text = await textOf(new URL(link).hash);
    expect(openProject(text)).toEqual({ ok: true, value: project, notes: [] });
  });

  it('is short enough for any mail with a drafted project', async () => {
    expect((await linkOf(exampleProject)).length).toBeLessThan(1500);
  });

  it('is refused in a sentence where the project is too long for it', async () => {
    const { leg } = exampleProject;
    const noise = Array.from({ length: 3000 }, (_, i) => Math.sin(i * 12.9898) * 43758.5453);
    const link = await projectLink({ ...exampleProject, leg, noise } as Project, 'leg', PAGE);
    expect(link.ok ? '' : link.problems[0]?.phrase.template).toMatch(/too long for a link.*Save it as a file/);
  });

  it.each([
    ['nothing', '#project='],
    ['no letters of ours', '#project=%%%'],
    ['letters that were not packed', '#project=AAAA'],
    ['half of it', '#project=fY9BCsIwEEX'],
    ['bytes that are no text', `#project=${deflateRawSync(Buffer.from([0xff, 0xfe, 0x80])).toString('base64url')}`],
  ])('that is broken is said to be: %s', async (_what, hash) => {
    expect(await sentenceOf(hash)).toBe('is incomplete. Was the link cut off?');
  });

  it('that was cut anywhere is said to be broken, never opened in part', async () => {
    const { hash } = new URL(await linkOf(exampleProject));
    for (let end = hash.indexOf('project=') + 'project='.length; end < hash.length; end += 41)
      expect(await sentenceOf(hash.slice(0, end)), `cut at ${end}`).toMatch(/Was the link cut off/);
  });

  it('without a station still opens, and a station without a project is no link', async () => {
    const { hash } = new URL(await linkOf(exampleProject));
    const bare = hash.replace('station=leg&', '');
    expect(bare.startsWith('#project=')).toBe(true);
    expect(await textOf(bare)).toBe(await textOf(hash));
    expect([stationFromHash(bare), stationFromHash('#station=nowhere')]).toEqual([undefined, undefined]);
    expect(await projectFromHash('#station=leg')).toBeUndefined();
  });

  it('is none where nothing of ours stands behind the #', async () => {
    expect(await projectFromHash('')).toBeUndefined();
    expect(await projectFromHash('#top')).toBeUndefined();
  });

  it('of a few letters that unpacks to more than any project is stopped, and said to be', async () => {
    const bomb = (bytes: number) => deflateRawSync('x'.repeat(bytes), { level: 9 }).toString('base64url');
    expect(bomb(6_000_000).length).toBeLessThan(8000);
    expect(await sentenceOf(`#project=${bomb(6_000_000)}`)).toMatch(
      /more than any project that fits into a link, 500 kB/,
    );
    expect(await textOf(`#project=${bomb(400_000)}`)).toHaveLength(400_000);
  });

  it('draws the same leg', async () => {
    const opened = openProject(await textOf(new URL(await linkOf(exampleProject)).hash));
    const first = draft(exampleProject);
    const second = opened.ok ? draft(opened.value) : undefined;
    expect(second?.ok && second.value.measures).toEqual(first.ok && first.value.measures);
  });
});
