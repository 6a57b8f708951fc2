// Notes written without a signal: the network cut, the program restarted, the
// browser's storage cleared. Needs chromium and `npm ci`, as test.mjs.
import assert from 'node:assert/strict';
import { execFileSync, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { large, launch, opener, shots, sound, unprintable, wide } from './looks.mjs';

const root = new URL('..', import.meta.url).pathname;
const folder = mkdtempSync(join(tmpdir(), 'offline-'));
const program = join(folder, 'pages.test');
const bed = '/space/gate-bed/note/sown';
let browser, url, child, port;

async function startProgram() {
  child = spawn(program, ['-test.run', '^TestServeKept$', '-servekept', `127.0.0.1:${port},${join(folder, 'data')}`], { stdio: ['pipe', 'pipe', 'inherit'] });
  await new Promise((yes, no) => {
    let text = '';
    child.on('exit', code => no(new Error(`the program ended early: ${code}`)));
    child.stdout.on('data', d => { text += d; if (text.includes('serving kept')) yes(); });
  });
}

async function stopProgram() {
  child.removeAllListeners('exit');
  const gone = new Promise(yes => child.once('exit', yes));
  child.kill('SIGKILL');
  await gone;
}

before(async () => {
  execFileSync('go', ['test', '-c', '-o', program, './internal/web'], { cwd: root, stdio: 'inherit' });
  port = await new Promise(yes => { const s = createServer().listen(0, '127.0.0.1', () => { const p = s.address().port; s.close(() => yes(p)); }); });
  url = `http://127.0.0.1:${port}`;
  await startProgram();
  browser = await launch('MAP garden.test 127.0.0.1, ');
});

after(async () => {
  await browser?.close();
  child?.removeAllListeners('exit');
  child?.kill('SIGKILL');
  rmSync(folder, { recursive: true, force: true });
});

// entries reads the record through its export of counts: the page says it.
const entries = async () => Number((await (await fetch(`${url}/safe`)).text()).match(/data-label="Entries kept">(\d+)/)[1]);
const until = async (what, ask, ms = 15000) => {
  const end = Date.now() + ms;
  for (;;) {
    if (await ask()) return;
    if (Date.now() > end) assert.fail(`never came: ${what}`);
    await new Promise(r => setTimeout(r, 100));
  }
};
async function phone(options = {}) {
  const context = await browser.newContext(options);
  const page = await context.newPage();
  page.faults = [];
  page.on('pageerror', e => page.faults.push(e.message));
  return { context, page };
}
async function ready(page) {
  await page.goto(`${url}/`);
  await until('the worker', () => page.evaluate(() => document.documentElement.dataset.ready === 'yes'));
  await until('pages gathered', () => page.evaluate(() => document.documentElement.dataset.gathered === 'yes'), 60000);
}
async function sow(page, count) {
  await page.goto(`${url}${bed}`, { waitUntil: 'networkidle' });
  await page.selectOption('#crop', 'kale');
  await page.fill('#count', String(count));
  await page.fill('#day', '2015-10-07');
  await page.click('form.form button.main');
}
const held = page => page.evaluate(() => document.getElementById('held')?.textContent ?? '');

test('with a signal a note goes home at once, and only once', async () => {
  const { context, page } = await phone();
  const was = await entries();
  await sow(page, 3);
  await page.waitForURL(/\/space\/gate-bed(\?|$)/);
  assert.equal(await entries(), was + 1);
  assert.deepEqual(page.faults, []);
  await context.close();
});

test('at the bed, the network cut: pages open, notes wait in words, and come home after a restart of both', async () => {
  const { context, page } = await phone();
  await ready(page);
  const was = await entries();
  await context.setOffline(true);
  await stopProgram();
  for (const n of [4, 5, 6]) { await sow(page, n); await page.waitForSelector('#kept'); }
  await until('three wait', async () => /3 notes wait/.test(await held(page)));
  // the page is loaded again, and another one opened, without a signal
  await page.reload();
  assert.match(await page.textContent('h1'), /Sown/);
  await page.goto(`${url}/lines`);
  assert.match(await page.textContent('h1'), /\w/);
  await until('still three', async () => /3 notes wait/.test(await held(page)));
  await startProgram();
  await context.setOffline(false);
  await page.goto(`${url}/unsent`);
  await until('nothing waits', async () => /Everything is home/.test(await page.textContent('#held-count')));
  assert.equal(await entries(), was + 3);
  await page.click('#send');
  await page.reload();
  assert.equal(await entries(), was + 3, 'sent again, they stay three');
  assert.deepEqual(page.faults, []);
  await context.close();
});

test('the reply lost after the note was kept: kept once', async () => {
  const { context, page } = await phone();
  const was = await entries();
  await page.goto(`${url}${bed}`);
  let lost = 0;
  await page.route('**/sync', async route => {
    if (route.request().method() !== 'POST' || lost++ > 1) return route.continue();
    await route.fetch(); // the program keeps it
    return route.abort(); // the phone hears nothing
  });
  await page.selectOption('#crop', 'kale');
  await page.fill('#count', '7');
  await page.fill('#day', '2015-10-07');
  await page.click('form.form button.main');
  await until('it waits', async () => /1 note waits/.test(await held(page)));
  await page.unroute('**/sync');
  await page.goto(`${url}/unsent`);
  await until('home', async () => /Everything is home/.test(await page.textContent('#held-count')));
  assert.equal(await entries(), was + 1);
  await context.close();
});

test('storage cleared after sending loses nothing; before sending it is said with the last count', async () => {
  const { context, page } = await phone();
  await page.goto(`${url}${bed}`);
  const was = await entries();
  // what waits is refused for a while: the program hears of it and keeps none
  await page.route('**/sync', route => {
    if (route.request().method() !== 'POST') return route.continue();
    const b = JSON.parse(route.request().postData());
    return route.continue({ postData: JSON.stringify({ ...b, entries: [] }) });
  });
  await page.selectOption('#crop', 'kale');
  await page.fill('#count', '8');
  await page.fill('#day', '2015-10-07');
  await page.click('form.form button.main');
  await until('it waits', async () => /1 note waits/.test(await held(page)));
  await until('the page is done with it: it had been sent twice', async () => /Kept on this device/.test(await page.textContent('#kept')));
  await page.unroute('**/sync');
  await page.goto('about:blank');
  const session = await context.newCDPSession(page);
  await session.send('Storage.clearDataForOrigin', { origin: url, storageTypes: 'all' });
  await page.goto(`${url}/unsent`);
  await until('the loss is said', async () => /held 1 note when last heard of/.test((await page.textContent('#lost').catch(() => '')) ?? ''));
  assert.equal(await entries(), was);
  // after sending
  await sow(page, 9);
  await page.waitForURL(/\/space\/gate-bed(\?|$)/);
  await page.goto('about:blank');
  await session.send('Storage.clearDataForOrigin', { origin: url, storageTypes: 'all' });
  await page.goto(`${url}/unsent`);
  await until('nothing waits', async () => /Everything is home/.test(await page.textContent('#held-count')));
  assert.equal(await page.locator('#lost').count(), 0);
  assert.equal(await entries(), was + 1);
  await context.close();
});

test('a restore at home: a new epoch brings everything sent before home again', async () => {
  const { context, page } = await phone();
  await sow(page, 10);
  await page.waitForURL(/\/space\/gate-bed(\?|$)/);
  await page.waitForLoadState('networkidle');
  const was = await entries();
  let posts = 0;
  await page.route('**/sync', async route => {
    const answer = await route.fetch();
    const body = await answer.json();
    if (route.request().method() === 'POST') posts += JSON.parse(route.request().postData()).entries.length;
    await route.fulfill({ response: answer, json: { ...body, epoch: '1-AAAAAAAAAAAAAAAAAAAAAAAAAA' } });
  });
  await page.goto(`${url}/unsent`);
  await until('sent again', async () => posts >= 1);
  await until('said', async () => /put back to a backup/.test((await page.textContent('#epoch').catch(() => '')) ?? ''));
  assert.equal(await entries(), was, 'those still there are not doubled');
  await context.close();
});

test('on a plain address an open page still keeps notes, and says what is lacking', async () => {
  const { context, page } = await phone();
  const plain = url.replace('127.0.0.1', 'garden.test');
  await page.goto(`${plain}/unsent`);
  assert.equal(await page.evaluate(() => 'serviceWorker' in navigator), false, 'not a private address');
  assert.match(await page.textContent('.caution'), /not private/);
  await page.goto(`${plain}${bed}`);
  const was = await entries();
  await context.setOffline(true);
  await page.selectOption('#crop', 'kale');
  await page.fill('#count', '11');
  await page.fill('#day', '2015-10-07');
  await page.click('form.form button.main');
  await until('it waits', async () => /1 note waits/.test(await held(page)));
  await context.setOffline(false);
  await until('it goes home by itself', async () => (await held(page)) === '');
  assert.equal(await entries(), was + 1);
  await context.close();
});

test('a phone that will not send hands its notes over as a file, once', async () => {
  const { context, page } = await phone();
  await ready(page);
  const was = await entries();
  await context.setOffline(true);
  await sow(page, 12);
  await page.waitForSelector('#kept');
  await until('it waits', async () => /1 note waits/.test(await held(page)));
  await page.goto(`${url}/unsent`);
  const [file] = await Promise.all([page.waitForEvent('download'), page.click('#save')]);
  const path = join(folder, 'notes.json');
  await file.saveAs(path);
  const other = await phone();
  for (let i = 0; i < 2; i++) {
    await other.page.goto(`${url}/unsent`);
    await other.page.setInputFiles('#notes', path);
    await other.page.click('form.form button');
    assert.match(await other.page.textContent('.saved'), /1 of 1 note kept/);
  }
  assert.equal(await entries(), was + 1);
  await context.setOffline(false);
  await page.goto(`${url}/unsent`);
  await until('home', async () => /Everything is home/.test(await page.textContent('#held-count')));
  assert.equal(await entries(), was + 1, 'handed over and sent, it is one');
  await context.close();
  await other.context.close();
});

test('without script the form goes straight to the program', async () => {
  const { context, page } = await phone({ javaScriptEnabled: false });
  const was = await entries();
  await sow(page, 13);
  assert.match(await page.textContent('.saved'), /Saved/);
  assert.equal(await entries(), was + 1);
  await context.close();
});

test('two answers to one question stand side by side; a choice by keyboard settles them', async () => {
  const open = opener(() => browser, () => url, /status of 422/);
  for (const width of [390, 1280]) {
    const page = await open('/safe', width);
    await sound(page, `/safe at ${width}`);
    await page.screenshot({ path: `${shots}/knot-${width}.png`, fullPage: true });
    await page.locator('.knot').screenshot({ path: `${shots}/knot-only-${width}.png` });
    const [a, b] = await page.locator('.sides li').evaluateAll(all => all.map(e => e.getBoundingClientRect()).map(r => [r.left, r.top]));
    assert.equal(a[1] === b[1], width > 700, 'side by side where there is room');
    if (width > 700) await page.pdf({ path: `${shots}/safe.pdf`, format: 'A4' });
    assert.deepEqual(await unprintable(page), [], 'on paper');
    await page.context().close();
  }
  const page = await open('/safe', 320);
  await large(page);
  assert.deepEqual(await wide(page), [], 'text twice as large');
  await page.locator('#third0').fill('many');
  await page.locator('#third0').press('Enter');
  assert.match(await page.locator('#f-third0').innerText(), /whole number/);
  assert.equal(await page.locator('#third0').inputValue(), 'many');
  await page.getByRole('button', { name: /Keep this one, by home/ }).focus();
  await page.keyboard.press('Enter');
  assert.match(await page.locator('.saved').innerText(), /Settled/);
  assert.equal(await page.locator('.knot').count(), 0);
  await page.context().close();
});
