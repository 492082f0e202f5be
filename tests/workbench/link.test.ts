import { deflateRawSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { draft, exampleProject, openProject, type Project } from '../../src/project';
import { projectFromHash, projectLink } from '../../src/workbench/keep/link';

const PAGE = 'https://example.org/legwork/';
const linkOf = async (project: Project) => {
  const link = await projectLink(project, PAGE);
  if (!link.ok) throw new Error('too long');
  return link.value;
};

describe('a link', () => {
  it('gives back the whole project, unknown fields and all', async () => {
    const project = { ...exampleProject, name: 'Für „Ütz“, 40⅛', notes: { from: 'class' } };
    const link = await linkOf(project);
    expect(link.startsWith(`${PAGE}#project=`)).toBe(true);
    expect(link).toMatch(/#project=[\w-]+$/);
    const text = await projectFromHash(new URL(link).hash);
    expect(openProject(text ?? '')).toEqual({ ok: true, value: project });
  });

  it('is short enough for any mail with a drafted project', async () => {
    expect((await linkOf(exampleProject)).length).toBeLessThan(1500);
  });

  it('is refused in a sentence where the project is too long for it', async () => {
    const { leg } = exampleProject;
    const noise = Array.from({ length: 3000 }, (_, i) => Math.sin(i * 12.9898) * 43758.5453);
    const link = await projectLink({ ...exampleProject, leg, noise } as Project, PAGE);
    expect(link.ok ? '' : link.problems[0]?.phrase.join('')).toMatch(/too long for a link.*Save it as a file/);
  });

  it.each(['#project=', '#project=%%%', '#project=AAAA', '#project=fY9BCsIwEEX'])(
    'that is broken throws: %s',
    async (hash) => {
      await expect(projectFromHash(hash)).rejects.toThrow();
    },
  );

  it('is none where nothing of ours stands behind the #', async () => {
    expect(await projectFromHash('')).toBeUndefined();
    expect(await projectFromHash('#top')).toBeUndefined();
  });

  it('gives up on what unpacks to more than any project has', async () => {
    const packed = deflateRawSync('x'.repeat(6_000_000)).toString('base64url');
    await expect(projectFromHash(`#project=${packed}`)).rejects.toThrow(/more than any project/);
  });

  it('draws the same leg', async () => {
    const text = await projectFromHash(new URL(await linkOf(exampleProject)).hash);
    const opened = openProject(text ?? '');
    const first = draft(exampleProject);
    const second = opened.ok ? draft(opened.value) : undefined;
    expect(second?.ok && second.value.measures).toEqual(first.ok && first.value.measures);
  });
});
