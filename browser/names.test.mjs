// Browser tests of seeds, trays, hand-overs and names, on the program itself:
// BEDWEEK_BIN=… node --test names.test.mjs
import assert from 'node:assert/strict';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { large, launch, opener, shots, sound, unprintable, wide } from './looks.mjs';
import { run } from './server.mjs';

const paths = [
  ['seeds', '/seeds'], ['seeds-new', '/seeds/new'], ['lot', '/lot/kale-1'], ['plant', '/plant/store-1'], ['move', '/plant/store-1/move/set-out'],
  ['seed', '/plant/bed-1/seed'], ['which', '/which/store-1'], ['which-ask', '/which/store-1?answer=is&name=Curled+Ebb'], ['labels', '/labels?id=store-1&id=store-2'],
];

let program, browser, url;

before(async () => {
  program = await run(folder => ['serve', '-garden', 'browser/names-garden.yaml', '-weather', 'demo/seattle-weather.csv', '-date', '2015-04-15', '-port', '0', join(folder, 'data')]);
  url = program.url;
  browser = await launch();
});

after(async () => {
  await browser?.close();
  await program?.stop();
});

const open = opener(() => browser, () => url, /status of 4(04|22)/);

for (const width of [390, 1280]) {
  test(`at ${width} px: fits, nothing for axe, targets of 44 px`, async () => {
    for (const [word, path] of paths) {
      const page = await open(path, width);
      await sound(page, word);
      await page.reload();
      await page.screenshot({ path: join(shots, `names-${word}-${width}.png`), fullPage: true });
      await page.context().close();
    }
  });
}

test('large text on a narrow phone: nothing sticks out', async () => {
  for (const [word, path] of paths) {
    const page = await open(path, 320);
    await large(page);
    assert.deepEqual(await wide(page), [], word);
    await page.context().close();
  }
});

test('the menu holds eight pages, Seeds among them', async () => {
  const page = await open('/seeds', 390);
  assert.equal(await page.locator('.menu a').count(), 8);
  assert.equal(await page.locator('.menu a[aria-current=page]').innerText(), 'Seeds');
  await page.context().close();
});

test('the answer of a hand-over is a bar of 88 px, others 60 px', async () => {
  const page = await open('/plant/store-2/move/prick-out', 390);
  const tall = async name => (await page.getByRole('button', { name, exact: true }).boundingBox()).height;
  assert.ok(await tall('All 6') >= 88);
  assert.ok(await tall('Some of them') >= 60);
  await page.context().close();
});

test('without script: one tap pots on, a mix is set out, its name narrowed, all taken back', async () => {
  const page = await open('/plant/store-2', 390, { javaScriptEnabled: false });
  await page.getByRole('link', { name: 'Pot on' }).click();
  await page.getByRole('button', { name: 'All 6', exact: true }).click();
  assert.match(await page.locator('.saved').innerText(), /Saved: potted on, 6 plants\. They are still .+\./);
  await page.goto(url + '/plant/store-2/move/set-out');
  await page.getByLabel('Into which space').selectOption({ label: 'Bed' });
  await page.getByLabel('How many').fill('4');
  await page.getByText('I do not know from which tray').click();
  await page.getByLabel(/Perhaps this tray/).check();
  await page.locator('input[name=other]').first().check();
  await page.getByRole('button', { name: 'Some of them' }).click();
  assert.match(await page.locator('.saved').innerText(), /These are now .+ On the stick:/);
  await page.getByRole('link', { name: 'Which one is this?' }).click();
  const dots = await page.locator('[data-of20]').evaluateAll(es => es.map(e => Number(e.dataset.of20)));
  assert.equal(dots.reduce((a, b) => a + b, 0), 20);
  await page.getByRole('button', { name: 'It is this: Black Frond' }).click();
  assert.match(await page.locator('main').innerText(), /This is what changes:/);
  await page.getByRole('button', { name: /Agree/ }).click();
  assert.match(await page.locator('.saved').innerText(), /kale, Black Frond/);
  await page.getByRole('button', { name: 'Take it back' }).click();
  assert.match(await page.locator('main').innerText(), /one of/);
  await page.context().close();
});

test('a tag opens its plant; a sheet of labels is a PDF', async () => {
  const page = await open('/plant/store-1', 390);
  const tag = (await page.locator('.tagline').innerText()).trim();
  assert.match(tag, /^[A-Z][a-z]+ [A-Z][a-z]+ \d\d$/);
  await page.goto(url + '/seeds');
  await page.getByLabel('The tag on a stick').fill(tag.toLowerCase());
  await page.getByRole('button', { name: 'Open it' }).click();
  assert.match(page.url(), /\/plant\/store-1$/);
  const scanned = await page.request.get(`${url}/P/${tag.toUpperCase().replaceAll(' ', '-')}`);
  assert.match(scanned.url(), /\/plant\/store-1$/);
  const pdf = await page.request.get(url + '/labels.pdf?id=store-1');
  assert.equal(pdf.headers()['content-type'], 'application/pdf');
  assert.equal((await pdf.body()).subarray(0, 5).toString(), '%PDF-');
  await page.context().close();
});

test('paper: black, 14 pt or more', async () => {
  for (const [word, path] of [['seeds', '/seeds'], ['plant', '/plant/store-1'], ['lot', '/lot/kale-1']]) {
    const page = await open(path, 1000);
    assert.deepEqual(await unprintable(page), [], word);
    await page.context().close();
  }
});
