// Browser tests of water and weather: node --test dry.test.mjs
// Serves the fixtures, or tests BEDWEEK_URL, like test.mjs.
import assert from 'node:assert/strict';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { large, launch, opener, shots, sound, unprintable, wide } from './looks.mjs';
import { start } from './server.mjs';

const paths = [['dry', '/dry'], ['dry-limit', '/dry?next=72&litres=40'], ['away', '/away?days=10'], ['away-slip', '/away?days=x'], ['weather', '/weather']];

let server, browser;

before(async () => {
  server = await start();
  browser = await launch();
});

after(async () => {
  await browser?.close();
  server?.stop();
});

const open = opener(() => browser);

for (const width of [390, 1280]) {
  for (const [word, path] of paths) {
    test(`${word} at ${width} px: fits, nothing for axe, targets of 44 px`, async () => {
      for (const [name, url] of Object.entries(server.urls)) {
        const page = await open(url + path, width);
        await sound(page, name);
        assert.equal(await page.locator('main script').count(), 0);
        await page.reload();
        await page.screenshot({ path: join(shots, `${name}-${word}-${width}.png`), fullPage: true });
        await page.context().close();
      }
    });
  }
}

test('large text on a narrow phone: nothing sticks out', async () => {
  for (const [name, url] of Object.entries(server.urls)) {
    for (const [word, path] of paths) {
      const page = await open(url + path, 320);
      await large(page);
      assert.deepEqual(await wide(page), [], `${name} ${word}`);
      await page.context().close();
    }
  }
});

// Answers at a bed are bars of 60 px or more (wet hands).
test('answers about a space are 60 px tall', async () => {
  const page = await open(Object.values(server.urls)[0] + '/dry', 390);
  const sizes = await page.locator('.cards > li').first().locator('.found button').evaluateAll(bs => bs.map(b => b.getBoundingClientRect().height));
  assert.equal(sizes.length, 6);
  assert.ok(Math.min(...sizes) >= 60, `${sizes}`);
  await page.context().close();
});

test('without script: note a watering, take it back, ask for another visit, a reading with a slip', { skip: process.env.BEDWEEK_URL ? 'writes; fixtures only' : false }, async () => {
  const page = await open(server.urls.rich + '/dry', 390, { javaScriptEnabled: false });
  await page.locator('.cards > li').first().getByRole('button', { name: 'Watered, two cans' }).click();
  assert.match(await page.locator('.saved').innerText(), /Saved: .+, two cans given\./);
  await page.getByRole('button', { name: 'Take it back' }).click();
  assert.match(await page.locator('.saved').innerText(), /Taken back/);
  await page.getByLabel('When will you next be here?').selectOption('72');
  await page.getByRole('button', { name: 'Show it so' }).click();
  assert.match(page.url(), /next=72/);
  await page.goto(server.urls.rich + '/weather');
  await page.getByLabel('The reading').fill('86');
  await page.getByLabel('Warmest of the day').check();
  await page.getByRole('button', { name: 'Save the reading' }).click();
  assert.match(await page.locator('.fault').innerText(), /30\.0 °C/);
  await page.getByLabel('The reading').fill('30');
  await page.getByRole('button', { name: 'Save the reading' }).click();
  assert.match(await page.locator('.saved').innerText(), /wins over the station/);
  await page.context().close();
});

test('paper: black, 14 pt or more, and the round on one sheet', async () => {
  for (const [name, url] of Object.entries(server.urls)) {
    for (const [word, path] of [['dry', '/dry'], ['away', '/away?days=8'], ['weather', '/weather']]) {
      const page = await open(url + path, 1000);
      assert.deepEqual(await unprintable(page), [], `${name} ${word}`);
      const pdf = (await page.pdf({ path: join(shots, `${name}-${word}.pdf`), preferCSSPageSize: true })).toString('latin1');
      if (word === 'away' && name !== 'hostile') assert.equal(pdf.match(/\/Type\s*\/Page[^s]/g).length, 1, `${name}: the round takes more than one sheet`);
      await page.context().close();
    }
  }
});
