// A restore by hand, as a nervous person does it: from the page "Is it safe?",
// and from the page of a record that does not open. Taps are counted.
import assert from 'node:assert/strict';
import { mkdtempSync, openSync, readdirSync, rmSync, writeSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { launch, opener, shots, sound, unprintable } from './looks.mjs';
import { run } from './server.mjs';

const data = join(mkdtempSync(join(tmpdir(), 'safe-')), 'data');
const serve = () => run(() => ['serve', '-port', '0', '-garden', 'browser/small-garden.yaml', '-weather', 'demo/south-normals.csv', data]);
let program, browser;

before(async () => {
  program = await serve();
  browser = await launch();
});

after(async () => {
  await browser?.close();
  await program?.stop();
  rmSync(join(data, '..'), { recursive: true, force: true });
});

const open = opener(() => browser, () => program.url, /status of 503/);

// counted taps what is named and counts.
const counted = page => {
  const tap = async (role, name) => { await page.getByRole(role, { name }).first().click(); tap.taps++; };
  tap.taps = 0;
  return tap;
};

// back waits until the pages are there again; the page looks by itself.
const back = async page => {
  for (let i = 0; i < 360; i++) {
    const head = await page.locator('h1').innerText({ timeout: 1000 }).catch(() => '');
    if (head && !/One moment|does not open/.test(head)) return;
    await page.waitForTimeout(500);
  }
  assert.fail('the pages never came back');
};

const sow = async (page, count) => {
  await page.goto(program.url + '/space/left-box/note/sown');
  await page.selectOption('#crop', 'kale');
  await page.fill('#count', String(count));
  await page.click('form.form button.main');
  await page.waitForURL(/space\/left-box(\?|$)/);
};

const kept = async page => { await page.goto(program.url + '/space/left-box'); return page.locator('ul.history').innerText(); };

test('from the first page to a restored record in six taps', async () => {
  // without script, so that no outbox sends again what the restore left out
  const page = await open('/', 390, { javaScriptEnabled: false });
  const tap = counted(page);
  await sow(page, 3);
  await page.goto(program.url + '/');
  await tap('link', 'More');
  await tap('link', /^Backup/);
  await tap('button', 'Make a backup and prove it');
  assert.match(await page.locator('.saved').innerText(), /Backup made and proven/);
  assert.equal(tap.taps, 3, 'taps to a proven backup');
  await sow(page, 44);
  assert.match(await kept(page), /44/);
  await page.goto(program.url + '/');
  tap.taps = 0;
  await tap('link', 'More');
  await tap('link', /^Backup/);
  await page.locator('summary', { hasText: 'going back to one' }).click();
  tap.taps++;
  await page.getByRole('link', { name: /going back to/ }).last().click();
  tap.taps++;
  assert.match(await page.locator('main').innerText(), /1 entry is newer than this backup/);
  const looked = await open(new URL(page.url()).pathname + new URL(page.url()).search, 390);
  await sound(looked, 'restore');
  await looked.screenshot({ path: `${shots}/restore-390.png`, fullPage: true });
  await looked.context().close();
  await tap('button', 'Yes, go back to it');
  await back(page);
  assert.ok(tap.taps <= 6, `${tap.taps} taps`);
  const history = await kept(page);
  assert.doesNotMatch(history, /44/, 'what came after the backup is gone');
  assert.match(history, /3 plants/);
  await page.goto(program.url + '/safe');
  await page.locator('summary', { hasText: 'going back to one' }).click();
  assert.ok(await page.locator('.copies li').count() >= 2, 'the record as it stood was backed up first');
  await page.context().close();
});

test('the sheet for the binder, on the screen and on paper', async () => {
  for (const width of [390, 1280]) {
    const page = await open('/recovery', width);
    await sound(page, `/recovery at ${width}`);
    await page.screenshot({ path: `${shots}/recovery-${width}.png`, fullPage: true });
    if (width > 700) await page.pdf({ path: `${shots}/recovery.pdf`, format: 'A4' });
    assert.deepEqual(await unprintable(page), [], 'on paper');
    await page.context().close();
  }
});

test('a damaged record: its page leads back in one tap', async () => {
  await program.stop();
  const file = openSync(join(data, 'ledger.db'), 'r+');
  writeSync(file, Buffer.alloc(4096, 7), 0, 4096, 4096);
  program = await serve();
  const page = await open('/', 390);
  assert.match(await page.locator('h1').innerText(), /does not open/);
  await sound(page, 'damaged');
  await page.screenshot({ path: `${shots}/damaged-390.png`, fullPage: true });
  await page.getByRole('button', { name: /^Go back to/ }).first().click();
  await back(page);
  assert.match(await kept(page), /3 plants/);
  assert.equal(readdirSync(join(data, 'aside')).length, 2, 'both old records lie aside');
  await page.context().close();
});
