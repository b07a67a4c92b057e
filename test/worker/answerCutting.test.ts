import { describe, expect, it } from 'vitest';
import { layOutSheets, type SheetPart } from '../../src/core/build/sheets/index.ts';
import { answerCutting, type CuttingAnswer, type CuttingJob } from '../../src/worker/index.ts';

const part = (id: string, lengthM: number, widthM: number, count: number): SheetPart => ({
  id,
  lengthM,
  widthM,
  count,
  grain: 'along-length',
  allowRotation: false,
});
const job = (groups: CuttingJob['groups']): CuttingJob => ({
  groups,
  stock: { lengthM: 1, widthM: 1, count: 'unlimited' },
  kerfM: 0.003,
  trimM: 0,
  seed: 1,
  effort: 200,
});
const heard = (asked: CuttingJob): CuttingAnswer[] => {
  const answers: CuttingAnswer[] = [];
  answerCutting(asked, (answer) => answers.push(answer));
  return answers;
};
const layouts = (answers: readonly CuttingAnswer[], group: number) =>
  answers.flatMap((answer) => (answer.kind === 'layout' && answer.group === group ? [answer.layout] : []));

// Area asks for one board, no pair of the large ones fits beside a third: two are needed, and the bound alone does not prove it.
const HARD = [part('a', 0.6, 0.45, 3), part('b', 0.38, 0.3, 1)];
const EASY = [part('c', 0.5, 0.4, 2)];

describe('answerCutting', () => {
  it('gives a first layout of every group before it searches, and ends with done', () => {
    const answers = heard(job([HARD, EASY]));
    expect(answers.slice(0, 2).map((answer) => answer.kind === 'layout' && answer.group)).toEqual([0, 1]);
    expect(answers.at(-1)).toEqual({ kind: 'done' });
    expect(answers.filter(({ kind }) => kind === 'done')).toHaveLength(1);
    expect(layouts(answers, 1)).toHaveLength(1);
  });

  it('ends each group with what the search itself finds with the same seed and effort', () => {
    const asked = job([HARD, EASY]);
    const { kerfM, trimM, seed, effort } = asked;
    for (const [group, parts] of asked.groups.entries())
      expect(layouts(heard(asked), group).at(-1)).toEqual(
        layOutSheets(parts, [asked.stock], { kerfM, trimM, seed, effort }),
      );
  });

  it('hands on why one group has no layout and goes on with the others', () => {
    const answers = heard(job([[part('huge', 3, 0.2, 1)], EASY]));
    const [refused] = layouts(answers, 0);
    expect(refused).toMatchObject({ ok: false, problems: [{ code: 'build.part-too-large' }] });
    expect(layouts(answers, 1)[0]?.ok).toBe(true);
    expect(answers.at(-1)).toEqual({ kind: 'done' });
  });

  it('answers with plain data that can be posted', () => {
    const answers = heard(job([HARD]));
    expect(structuredClone(answers)).toEqual(answers);
  });
});
