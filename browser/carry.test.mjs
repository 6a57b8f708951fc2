// Pictures, voice notes and hand-overs without a signal, on the program itself:
// BEDWEEK_BIN=… node --test carry.test.mjs
import assert from 'node:assert/strict';
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { launch } from './looks.mjs';

const root = new URL('..', import.meta.url).pathname;
const folder = mkdtempSync(join(tmpdir(), 'carry-'));
let program, browser, url, port;

async function startProgram() {
  program = spawn(process.env.BEDWEEK_BIN, ['serve', '-garden', join(root, 'browser/names-garden.yaml'), '-weather', join(root, 'demo/seattle-weather.csv'), '-date', '2015-04-15', '-port', String(port), join(folder, 'data')], { stdio: ['ignore', 'pipe', 'pipe'] });
  await new Promise((yes, no) => {
    const read = d => { if (/http:\/\/127/.test(d)) yes(); };
    program.stdout.on('data', read);
    program.stderr.on('data', read);
    program.on('exit', code => no(new Error(`ended early: ${code}`)));
  });
}

async function stopProgram() {
  program.removeAllListeners('exit');
  const gone = new Promise(yes => program.once('exit', yes));
  program.kill('SIGKILL');
  await gone;
}

before(async () => {
  port = await new Promise(yes => { const s = createServer().listen(0, '127.0.0.1', () => { const p = s.address().port; s.close(() => yes(p)); }); });
  url = `http://127.0.0.1:${port}`;
  await startProgram();
  browser = await launch();
});

after(async () => {
  await browser?.close();
  program?.removeAllListeners('exit');
  program?.kill('SIGKILL');
  rmSync(folder, { recursive: true, force: true });
});

const entries = async () => Number((await (await fetch(`${url}/safe`)).text()).match(/data-label="Entries kept">(\d+)/)[1]);
const until = async (what, ask, ms = 20000) => {
  for (const end = Date.now() + ms; ;) {
    if (await ask()) return;
    if (Date.now() > end) assert.fail(`never came: ${what}`);
    await new Promise(r => setTimeout(r, 100));
  }
};
const held = page => page.evaluate(() => document.getElementById('held')?.textContent ?? '');

async function phone() {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
  const page = await context.newPage();
  page.faults = [];
  page.on('pageerror', e => page.faults.push(e.message));
  await page.goto(`${url}/quick`);
  await until('pages gathered', () => page.evaluate(() => document.documentElement.dataset.gathered === 'yes'), 60000);
  return { context, page };
}

// A picture as a phone gives it, drawn by the browser; and a sound, 0.1 s of quiet.
const picture = page => page.evaluate(() => new Promise(yes => {
  const c = document.createElement('canvas');
  c.width = c.height = 300;
  c.getContext('2d').fillRect(50, 50, 100, 120);
  c.toBlob(async b => yes([...new Uint8Array(await b.arrayBuffer())]), 'image/jpeg');
})).then(b => ({ name: 'bed.jpg', mimeType: 'image/jpeg', buffer: Buffer.from(b) }));
function sound() {
  const b = Buffer.alloc(44 + 800);
  b.write('RIFF', 0); b.writeUInt32LE(36 + 800, 4); b.write('WAVEfmt ', 8); b.writeUInt32LE(16, 16); b.writeUInt16LE(1, 20); b.writeUInt16LE(1, 22);
  b.writeUInt32LE(8000, 24); b.writeUInt32LE(8000, 28); b.writeUInt16LE(1, 32); b.writeUInt16LE(8, 34); b.write('data', 36); b.writeUInt32LE(800, 40); b.fill(128, 44);
  return { name: 'note.wav', mimeType: 'audio/wav', buffer: b };
}
const bed = page => page.getByRole('button', { name: 'Bed', exact: true }).click();

test('a picture, a sound and a hand-over wait without a signal, and come home once', async () => {
  const { context, page } = await phone();
  const was = await entries();
  const shot = await picture(page);
  await context.setOffline(true);
  await stopProgram();
  await page.goto(`${url}/quick?what=photo`);
  await page.setInputFiles('#photo', shot);
  await bed(page);
  await page.waitForSelector('#kept');
  await page.goto(`${url}/quick?what=voice`);
  await page.setInputFiles('#voice', sound());
  await bed(page);
  await page.waitForSelector('#kept');
  await page.goto(`${url}/seeds`);
  await page.locator('form.handed button.main').first().click();
  await page.waitForSelector('#kept');
  await until('three wait', async () => /3 notes wait/.test(await held(page)));
  await page.goto(`${url}/unsent`);
  await until('they are listed', async () => /photo: 0.0 MB/.test(await page.textContent('#waiting')));
  // The first answer of each is lost on the way; then the program is started anew.
  await startProgram();
  let lost = 0;
  await page.route(/\/(photo|voice|plant\/.*\/move\/.*)$/, async route => {
    if (route.request().method() !== 'POST' || lost > 2) return route.continue();
    lost++;
    await route.fetch({ maxRedirects: 0 });
    return route.abort();
  });
  await context.setOffline(false);
  for (let k = 1; k <= 3; k++) {
    await page.reload();
    await until(`answer ${k} lost`, async () => lost === k);
    await page.waitForLoadState('networkidle');
  }
  await stopProgram();
  await startProgram();
  await page.unroute(/\/(photo|voice|plant\/.*\/move\/.*)$/);
  await page.reload();
  await until('nothing waits', async () => /Everything is home/.test(await page.textContent('#held-count')));
  assert.equal(await entries(), was + 3, 'each is one entry');
  await page.click('#send');
  await page.reload();
  assert.equal(await entries(), was + 3);
  await page.goto(`${url}/space/bed/photos`);
  assert.equal(await page.locator('audio').count(), 1);
  assert.equal(await page.evaluate(() => document.querySelector('main img').naturalWidth > 0), true, 'the picture is whole');
  const left = await page.evaluate(() => new Promise(yes => { indexedDB.open('bedweek').onsuccess = e => { e.target.result.transaction('notes').objectStore('notes').getAll().onsuccess = g => yes(g.target.result.filter(n => Object.values(n.fields).some(v => v instanceof Blob)).length); }; }));
  assert.equal(left, 0, 'files sent are let go');
  assert.deepEqual(page.faults, []);
  await context.close();
});

test('with a signal a hand-over leads on to the saved line with its way back', async () => {
  const { context, page } = await phone();
  const was = await entries();
  await page.goto(`${url}/seeds`);
  await page.locator('form.handed button.main').first().click();
  await page.waitForURL(/saved=/);
  assert.match(await page.locator('.saved').innerText(), /Take it back/);
  assert.equal(await entries(), was + 1);
  await context.close();
});

test('what is too large is said at once and not half kept; a slip of a waiting form is told', async () => {
  const { context, page } = await phone();
  const was = await entries();
  await page.goto(`${url}/quick?what=photo`);
  const big = join(folder, 'big.jpg');
  writeFileSync(big, Buffer.alloc(17 << 20));
  await page.setInputFiles('#photo', big);
  await bed(page);
  await until('it is said', async () => /17 MB. At most 16/.test((await page.textContent('#kept').catch(() => '')) ?? ''));
  assert.equal(await held(page), '');
  await context.setOffline(true);
  await page.goto(`${url}/quick?what=voice`);
  await page.setInputFiles('#voice', { name: 'note.wav', mimeType: 'audio/wav', buffer: Buffer.from('this is no sound') });
  await bed(page);
  await page.waitForSelector('#kept');
  await context.setOffline(false);
  await page.goto(`${url}/unsent`);
  await until('why is told', async () => /Throw this one away/.test(await page.textContent('#waiting')) && /sound/i.test(await page.textContent('#waiting')));
  assert.equal(await entries(), was);
  await context.close();
});

test('three pictures of sixteen megabytes wait, the fourth of three is not kept and says why', async () => {
  const { context, page } = await phone();
  await context.setOffline(true);
  const keep = async (name, bytes) => {
    const at = join(folder, name);
    writeFileSync(at, Buffer.alloc(bytes));
    await page.goto(`${url}/quick?what=photo`);
    await page.setInputFiles('#photo', at);
    await bed(page);
    await until(`an answer to ${name}`, async () => (await page.textContent('#kept').catch(() => '')) !== '');
    return page.textContent('#kept');
  };
  for (const name of ['one.jpg', 'two.jpg', 'three.jpg']) assert.doesNotMatch(await keep(name, 16 << 20), /not kept/);
  assert.match(await keep('four.jpg', 3 << 20), /50 MB wait here already. This one is not kept/);
  assert.match(await held(page), /3 notes wait/);
  await context.close();
});
