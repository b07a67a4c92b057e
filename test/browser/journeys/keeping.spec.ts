import { type BrowserContext, expect, type Page, test } from '@playwright/test';
import { dropFile, field, openApp, readAt, savedProject, settled, typeInto } from './page.ts';

/** Types a value and waits until the screen shows it and says that it is saved. */
async function edit(page: Page, name: string, text: string, shown: RegExp): Promise<void> {
  await typeInto(page, name, text);
  await expect(field(page, name)).toHaveText(shown);
  await settled(page);
}

/** Ends the page's process: no handler runs, nothing can be written any more. Closing a page does let its handlers run. */
async function kill(page: Page): Promise<void> {
  const crashed = page.waitForEvent('crash');
  const session = await page.context().newCDPSession(page);
  void session.send('Page.crash').catch(() => undefined);
  await crashed;
  await page.close();
}

/** One more window of the same browser. */
async function another(context: BrowserContext): Promise<{ readonly page: Page; readonly faults: string[] }> {
  const page = await context.newPage();
  return { page, faults: await openApp(page) };
}

const refusal = (page: Page) => page.getByTestId('refusal');
const sumAt1k = (page: Page) => readAt(page, 'response-sum', 1000);
const others = (page: Page) => page.getByRole('region', { name: 'Other work in this browser' });

/** Changes the stored record, as a failing disk would. */
const spoil = (page: Page, changes: object): Promise<void> =>
  page.evaluate(async (spoilt) => {
    const answer = <T>(request: IDBRequest<T>): Promise<T> =>
      new Promise((done, failed) => {
        request.onsuccess = () => done(request.result);
        request.onerror = () => failed(request.error);
      });
    const database = await answer(indexedDB.open('conewright'));
    const store = database.transaction('works', 'readwrite').objectStore('works');
    const [record] = (await answer(store.getAll())) as object[];
    if (record === undefined) throw new Error('Nothing is stored.');
    await answer(store.put({ ...record, ...spoilt }));
    database.close();
  }, changes);

test('what the screen says is saved outlives a tab that ends without its unload handlers', async ({
  page,
  context,
}) => {
  const faults = await openApp(page);
  await edit(page, 'C1 capacitance', '33 uF', /33\s*µF/);
  await edit(page, 'Length of port P1', '180 mm', /180\s*mm/);
  const before = await savedProject(page);
  const read = await sumAt1k(page);
  // The last edit has no time beyond the screen's word: the tab ends at once.
  await edit(page, 'C1 capacitance', '27 uF', /27\s*µF/);
  await kill(page);

  const next = await another(context);
  const parts = before.network.parts.map((part) =>
    part.id === 'C1' ? { ...part, farad: expect.closeTo(27e-6, 12) } : part,
  );
  expect(await savedProject(next.page)).toEqual({ ...before, network: { parts } });
  await edit(next.page, 'C1 capacitance', '33 uF', /33\s*µF/);
  expect(await sumAt1k(next.page)).toEqual(read);
  expect([...faults, ...next.faults]).toEqual([]);
});

test('a project saved as a file and chosen again is the identical document', async ({ page }) => {
  const faults = await openApp(page);
  await edit(page, 'C1 capacitance', '33 uF', /33\s*µF/);
  const saved = await savedProject(page);
  const read = await sumAt1k(page);
  await edit(page, 'C1 capacitance', '68 uF', /68\s*µF/);
  expect(await savedProject(page)).not.toEqual(saved);

  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Open', exact: true }).click();
  await (await chooser).setFiles({
    name: 'again.conewright.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(saved)),
  });
  await expect(field(page, 'C1 capacitance')).toHaveText(/33\s*µF/);
  expect(await savedProject(page)).toEqual(saved);
  expect(await sumAt1k(page)).toEqual(read);
  expect(faults).toEqual([]);
});

test('a newer and a corrupt file are refused in a sentence, and the reading stays', async ({ page }) => {
  const faults = await openApp(page);
  const before = await savedProject(page);
  const read = await sumAt1k(page);
  const text = JSON.stringify(before, null, 2);
  for (const [file, said] of [
    [text.replace('"version": 1', '"version": 7'), /saved by a newer version \(format 7; this one reads up to 1\)/],
    [text.slice(0, text.length / 2), /no well-formed project: line \d+ cannot be read/],
    [text.replace(/"network": \{/, '"network": 3, "was": {'), /circuit/],
  ] as const) {
    await dropFile(page, 'dropped.conewright.json', file);
    await expect(refusal(page)).toContainText(said);
    expect(await sumAt1k(page)).toEqual(read);
    expect(await savedProject(page)).toEqual(before);
    await page.getByRole('button', { name: 'Dismiss' }).click();
    await expect(refusal(page)).toHaveCount(0);
  }
  expect(faults).toEqual([]);
});

for (const { what, changes } of [
  { what: 'garbage', changes: { text: '\u0000\u0007ÿ}{ no project' } },
  { what: 'a project without its contents', changes: { text: '{"format":"conewright-project","version":1}' } },
]) {
  test(`stored ${what} is kept aside and said when the app starts`, async ({ page }) => {
    const faults = await openApp(page);
    const demo = await savedProject(page);
    await edit(page, 'C1 capacitance', '33 uF', /33\s*µF/);
    await spoil(page, changes);
    await page.reload();
    await settled(page);
    await expect(refusal(page)).toContainText(
      /stored work cannot be read; it is kept aside as “Reading room three-way/,
    );
    await expect(refusal(page)).toContainText('Nothing was deleted');
    expect(await savedProject(page)).toEqual(demo);
    await page.getByRole('button', { name: 'New', exact: true }).click();
    await expect(others(page).getByRole('listitem')).toHaveCount(1);
    await expect(others(page)).toContainText('could not be read; kept as it was found');
    expect(faults).toEqual([]);
  });
}

test('of two windows the later writer goes on in a copy and says so', async ({ page, context }) => {
  const faults = await openApp(page);
  await edit(page, 'C1 capacitance', '33 uF', /33\s*µF/);
  const other = await another(context);
  await edit(other.page, 'R4 resistance', '4.7', /4\.7\s*Ω/);
  await expect(refusal(other.page)).toHaveCount(0);
  const theirs = await savedProject(other.page);

  await edit(page, 'C1 capacitance', '22 uF', /22\s*µF/);
  await expect(refusal(page)).toContainText(/nothing was overwritten.*“Reading room three-way, copy 2”/);
  const ours = await savedProject(page);
  await other.page.close();
  await page.close();

  const third = await another(context);
  await test.step('the work written last is taken up, the other can be had', async () => {
    expect(await savedProject(third.page)).toEqual(ours);
    await third.page.getByRole('button', { name: 'New', exact: true }).click();
    await others(third.page).getByRole('button', { name: 'Open' }).click();
    await expect(field(third.page, 'R4 resistance')).toHaveText(/4\.7\s*Ω/);
    expect(await savedProject(third.page)).toEqual(theirs);
  });
  expect([...faults, ...other.faults, ...third.faults]).toEqual([]);
});
