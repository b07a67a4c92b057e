import { readFileSync } from 'node:fs';
import { type BrowserContext, expect, type Page, test } from '@playwright/test';
import type { Part } from '../../../src/core/circuit/part.ts';
import type { Project } from '../../../src/core/document/schema.ts';
import { dropFile, field, openApp, readAt, savedProject, settled, typeInto } from './page.ts';

const part = <K extends Part['kind']>(project: Project, id: string, kind: K): Extract<Part, { kind: K }> => {
  const found = project.network.parts.find((candidate) => candidate.id === id);
  if (found?.kind !== kind) throw new Error(`${id} is no ${kind}.`);
  return found as Extract<Part, { kind: K }>;
};
const c1 = (project: Project): number => part(project, 'C1', 'capacitor').farad;
const r4 = (project: Project): number => part(project, 'R4', 'resistor').ohm;

/** Types a value and waits until the screen shows it and says that it is saved. */
async function edit(page: Page, name: string, text: string, shown: RegExp): Promise<void> {
  await typeInto(page, name, text);
  await expect(field(page, name)).toHaveText(shown);
  await settled(page);
}

/** Ends the page's process as a crash would: no event reaches the page, nothing can be written any more. */
async function kill(page: Page): Promise<void> {
  const crashed = page.waitForEvent('crash');
  const devtools = await page.context().newCDPSession(page);
  void devtools.send('Page.crash').catch(() => undefined);
  await crashed;
  await page.close();
}

/** One more window of the same browser. */
async function anotherWindow(context: BrowserContext): Promise<{ readonly page: Page; readonly faults: string[] }> {
  const page = await context.newPage();
  return { page, faults: await openApp(page) };
}

/** Rewrites the text of the stored work, as a failing disk or a newer version would have left it. */
const rewriteStored = (page: Page, how: 'cut' | 'garbage' | 'without its contents' | 'newer'): Promise<string> =>
  page.evaluate(async (kind) => {
    const answer = <T>(request: IDBRequest<T>): Promise<T> =>
      new Promise((done, failed) => {
        request.onsuccess = () => done(request.result);
        request.onerror = () => failed(request.error);
      });
    const database = await answer(indexedDB.open('conewright'));
    const store = database.transaction('works', 'readwrite').objectStore('works');
    const records = (await answer(store.getAll())) as { text: string }[];
    const [record] = records;
    if (record === undefined || records.length !== 1) throw new Error(`${records.length} works are stored.`);
    record.text = {
      cut: record.text.slice(0, record.text.length / 2),
      garbage: '\u0000\u0007ÿ}{ no project',
      'without its contents': '{"format":"conewright-project","version":1}',
      newer: record.text.replace(/"version":\s*2\b/, '"version": 3'),
    }[kind];
    await answer(store.put(record));
    database.close();
    return record.text;
  }, how);

/** The colours of a plot's picture as one number. */
const picture = (page: Page): Promise<number> =>
  page.getByRole('img', { name: /^Level at the listening point/ }).evaluate((element) => {
    const canvas = element as HTMLCanvasElement;
    const { data } = canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height);
    return data.reduce((sum, value) => (Math.imul(sum, 31) + value) | 0, 7);
  });

const refusal = (page: Page) => page.getByRole('alert').filter({ has: page.getByRole('button', { name: 'Dismiss' }) });
const others = (page: Page) => page.getByRole('region', { name: 'Other work in this browser' });
const openNew = (page: Page): Promise<void> => page.getByRole('button', { name: 'New', exact: true }).click();

test('what is said to be saved survives the killing of its tab', async ({ page, context }) => {
  await openApp(page);
  let before: Project | undefined;
  let read: unknown;
  await test.step('an edit, said to be saved, then the tab is killed', async () => {
    await edit(page, 'C1 capacitance', '33 uF', /33\s*µF/);
    await kill(page);
  });
  const second = await anotherWindow(context);
  await test.step('it is there in a new one; two more edits are killed in turn', async () => {
    expect(c1(await savedProject(second.page))).toBeCloseTo(33e-6, 12);
    await edit(second.page, 'Length of port P1', '180 mm', /180\s*mm/);
    await edit(second.page, 'R4 resistance', '4.7', /4\.7\s*Ω/);
    before = await savedProject(second.page);
    read = await readAt(second.page, 'response-sum', 1000);
    await kill(second.page);
  });
  await test.step('all of it is there, and it is one work, not several', async () => {
    const third = await anotherWindow(context);
    const project = await savedProject(third.page);
    expect(project).toEqual(before);
    expect(await readAt(third.page, 'response-sum', 1000)).toEqual(read);
    expect(c1(project)).toBeCloseTo(33e-6, 12);
    expect(r4(project)).toBe(4.7);
    expect(project.enclosure.ports[0]!.lengthM).toBeCloseTo(0.18, 9);
    await openNew(third.page);
    await expect(third.page.getByRole('dialog', { name: 'Begin with' })).toBeVisible();
    await expect(others(third.page)).toBeHidden();
    expect(third.faults).toEqual([]);
  });
  expect(second.faults).toEqual([]);
});

const unreadable = {
  sentence:
    /The stored work cannot be read; it is kept aside as “Reading room three-way, unreadable”.*Nothing was deleted/,
  listed: 'could not be read; kept as it was found',
};
for (const { how, sentence, listed } of [
  { how: 'cut', ...unreadable },
  { how: 'garbage', ...unreadable },
  { how: 'without its contents', ...unreadable },
  {
    how: 'newer',
    sentence:
      /The stored work was saved by a newer version; it is kept aside as “Reading room three-way, newer version”/,
    listed: 'made by a newer version; kept as it was found',
  },
] as const) {
  test(`stored work that is ${how} is kept aside, said, and never overwritten`, async ({ page }) => {
    const faults = await openApp(page);
    const demo = await savedProject(page);
    await edit(page, 'C1 capacitance', '33 uF', /33\s*µF/);
    const text = await rewriteStored(page, how);

    await test.step('the page opens with the demonstration and says so', async () => {
      await page.reload();
      await settled(page);
      await expect(refusal(page)).toContainText(sentence);
      expect(await savedProject(page)).toEqual(demo);
    });
    await test.step('the kept text can be had as it was', async () => {
      await openNew(page);
      const row = others(page).getByRole('listitem');
      await expect(row).toHaveCount(1);
      await expect(row).toContainText(listed);
      await expect(row.getByRole('button', { name: 'Open' })).toHaveCount(0);
      const download = page.waitForEvent('download');
      await row.getByRole('button', { name: 'Save as a file' }).click();
      expect(readFileSync(await (await download).path(), 'utf8')).toBe(text);
      await page.keyboard.press('Escape');
    });
    await test.step('new work goes on beside it and is there after a reload, and so is the kept text', async () => {
      await edit(page, 'R4 resistance', '4.7', /4\.7\s*Ω/);
      await page.reload();
      await settled(page);
      expect(r4(await savedProject(page))).toBe(4.7);
      await expect(refusal(page)).toBeHidden();
      await openNew(page);
      await expect(others(page).getByRole('listitem')).toHaveCount(1);
      await expect(others(page)).toContainText(listed);
    });
    expect(faults).toEqual([]);
  });
}

test('two windows do not overwrite each other', async ({ page, context }) => {
  const faults = await openApp(page);
  await edit(page, 'C1 capacitance', '33 uF', /33\s*µF/);
  const other = await anotherWindow(context);

  await test.step('the second window takes up the work and goes on with it', async () => {
    await expect(field(other.page, 'C1 capacitance')).toHaveText(/33\s*µF/);
    await edit(other.page, 'R4 resistance', '4.7', /4\.7\s*Ω/);
    await expect(refusal(other.page)).toBeHidden();
  });
  await test.step('the first, whose work is older, says so and stores its own beside it', async () => {
    await edit(page, 'C1 capacitance', '22 uF', /22\s*µF/);
    await expect(refusal(page)).toContainText(
      "nothing was overwritten: this window's work is now kept separately as “Reading room three-way, copy 2”",
    );
  });
  let theirs: Project | undefined;
  let ours: Project | undefined;
  await test.step('both go on, each with its own', async () => {
    await edit(other.page, 'R4 resistance', '5.6', /5\.6\s*Ω/);
    await edit(page, 'C1 capacitance', '18 uF', /18\s*µF/);
    await expect(refusal(other.page)).toBeHidden();
    theirs = await savedProject(other.page);
    ours = await savedProject(page);
  });
  await test.step('a third window finds the work written last, and the other among the kept ones', async () => {
    await page.close();
    await other.page.close();
    const third = await anotherWindow(context);
    const last = await savedProject(third.page);
    expect(last).toEqual(ours);
    expect([c1(last) * 1e6, r4(last)]).toEqual([expect.closeTo(18, 9), 2.7]);
    await openNew(third.page);
    await others(third.page).getByRole('listitem').getByRole('button', { name: 'Open' }).click();
    await expect(field(third.page, 'R4 resistance')).toHaveText(/5\.6\s*Ω/);
    const first = await savedProject(third.page);
    expect(first).toEqual(theirs);
    expect([c1(first) * 1e6, r4(first)]).toEqual([expect.closeTo(33, 9), 5.6]);
    await third.page.getByRole('button', { name: 'Undo' }).click();
    expect(await savedProject(third.page)).toEqual(last);
    expect(third.faults).toEqual([]);
  });
  expect([...faults, ...other.faults]).toEqual([]);
});

test('a reloaded window goes on with its own work, not with what another wrote last', async ({ page, context }) => {
  const faults = await openApp(page);
  const other = await anotherWindow(context);
  await edit(page, 'C1 capacitance', '33 uF', /33\s*µF/);
  await edit(other.page, 'R4 resistance', '4.7', /4\.7\s*Ω/);
  for (const window of [page, other.page]) {
    const before = await savedProject(window);
    await window.reload();
    await settled(window);
    expect(await savedProject(window)).toEqual(before);
    await expect(refusal(window)).toBeHidden();
  }
  await expect(field(page, 'C1 capacitance')).toHaveText(/33\s*µF/);
  await expect(field(other.page, 'R4 resistance')).toHaveText(/4\.7\s*Ω/);
  expect([...faults, ...other.faults]).toEqual([]);
});

test('a file that cannot be read is refused with place and remedy, and the picture stays', async ({ page }) => {
  const faults = await openApp(page);
  await edit(page, 'C1 capacitance', '33 uF', /33\s*µF/);
  const before = await savedProject(page);
  const text = JSON.stringify(before, null, 2);
  await readAt(page, 'response-sum', 1000);
  const painted = await picture(page);

  const files: readonly { readonly what: string; readonly text: string; readonly said: RegExp }[] = [
    {
      what: 'newer version',
      text: text.replace('"version": 2', '"version": 3'),
      said: /saved by a newer version \(format 3; this one reads up to 2\)\. It was left untouched\..*newest version/,
    },
    {
      what: 'cut off',
      text: text.slice(0, text.indexOf('"acousticCentreZM"')),
      said: /The file is no well-formed project: line \d+ cannot be read\. It may have been cut off/,
    },
    {
      what: 'a negative cone area',
      text: text.replace(/"sdM2": [\d.e-]+/, '"sdM2": -0.02'),
      said: /The cone area Sd of driver 1 is −200\scm²; it must be above 0\scm²\./,
    },
    {
      what: 'a part of no known kind',
      text: text.replace('"kind": "jumper"', '"kind": "fuse"'),
      said: /The kind of part 2 is “fuse”; it must be one of resistor, .*Choose one of these\./,
    },
    {
      what: 'a circuit that is a number',
      text: text.replace(/"network": \{/, '"network": 3, "was": {'),
      said: /The circuit should be a group of fields, but 3\.0 was found\./,
    },
    {
      what: 'another format',
      text: '{"format":"shopping-list","version":1}',
      said: /not a Conewright project.*shopping-list/,
    },
    { what: 'nothing', text: '', said: /The file is empty\..*Choose a project file/ },
    {
      what: 'words',
      text: 'Dear reader,\nthis is a letter.\n',
      said: /“broken\.conewright\.json” has no line with two numbers at its beginning\. Give a text with two or three columns/,
    },
  ];
  for (const file of files) {
    await test.step(file.what, async () => {
      await dropFile(page, 'broken.conewright.json', file.text);
      await expect(refusal(page)).toContainText(file.said);
      expect(await savedProject(page)).toEqual(before);
      expect(await picture(page)).toBe(painted);
      await page.getByRole('button', { name: 'Dismiss' }).click();
      await expect(refusal(page)).toBeHidden();
    });
  }
  await test.step('a whole file after them is opened, and undone', async () => {
    await dropFile(page, 'kitchen-shelf/kitchen-shelf.conewright.json');
    await expect(page.getByRole('textbox', { name: 'Name of the project' })).toHaveValue('Kitchen shelf two-way');
    await page.getByRole('button', { name: 'Undo' }).click();
    expect(await savedProject(page)).toEqual(before);
  });
  expect(faults).toEqual([]);
});

test('a project saved as a file is the same document in another browser', async ({ page, browser, baseURL }) => {
  const faults = await openApp(page);
  await edit(page, 'C1 capacitance', '33 uF', /33\s*µF/);
  await page.getByRole('button', { name: 'Keep this' }).click();
  await edit(page, 'R4 resistance', '4.7', /4\.7\s*Ω/);
  const save = async (from: Page): Promise<{ readonly name: string; readonly path: string; readonly text: string }> => {
    const download = from.waitForEvent('download');
    await from.getByRole('button', { name: 'Save', exact: true }).click();
    const file = await download;
    const path = await file.path();
    return { name: file.suggestedFilename(), path, text: readFileSync(path, 'utf8') };
  };
  const saved = await save(page);
  expect(saved.name).toBe('reading-room-three-way.conewright.json');

  const elsewhere = await browser.newContext(baseURL === undefined ? {} : { baseURL });
  const there = await elsewhere.newPage();
  const faultsThere = await openApp(there);
  await test.step('another browser begins with the demonstration', async () => {
    expect(r4(await savedProject(there))).toBe(2.7);
  });
  await test.step('it is chosen as a file there, and saved again: byte for byte the same', async () => {
    const chooser = there.waitForEvent('filechooser');
    await there.getByRole('button', { name: 'Open', exact: true }).click();
    await (await chooser).setFiles({
      name: saved.name,
      mimeType: 'application/json',
      buffer: Buffer.from(saved.text),
    });
    await expect(field(there, 'R4 resistance')).toHaveText(/4\.7\s*Ω/);
    expect((await save(there)).text).toBe(saved.text);
    expect(await readAt(there, 'response-sum', 1000)).toEqual(await readAt(page, 'response-sum', 1000));
  });
  await test.step('and after a reload', async () => {
    await settled(there);
    await there.reload();
    await settled(there);
    expect((await save(there)).text).toBe(saved.text);
  });
  await elsewhere.close();
  expect([...faults, ...faultsThere]).toEqual([]);
});
