// The walk, one stop a screen; quick notes counted in taps; the modes; the
// questions by keyboard; a day at the bed without a signal and home again.
// Needs chromium and `npm ci`. BEDWEEK_TIER=full looks at every page in every
// mode and width; else a thinner set.
import assert from 'node:assert/strict';
import { execFileSync, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, describe, test } from 'node:test';
import { launch, shots, sound } from './looks.mjs';

const full = process.env.BEDWEEK_TIER === 'full';
const root = new URL('..', import.meta.url).pathname;
const folder = mkdtempSync(join(tmpdir(), 'walk-'));
const program = join(folder, 'pages.test');
let browser, urls = {}, fixtures, keeper, port;

before(async () => {
  execFileSync('go', ['test', '-c', '-o', program, './internal/web'], { cwd: root, stdio: 'inherit' });
  fixtures = spawn(program, ['-test.run', '^TestServeFixture$', '-serve', '127.0.0.1'], { stdio: ['pipe', 'pipe', 'inherit'] });
  await new Promise(yes => {
    let text = '';
    fixtures.stdout.on('data', d => {
      text += d;
      for (const m of text.matchAll(/serving (\w+) (http:\S+)/g)) urls[m[1]] = m[2];
      if (Object.keys(urls).length === 3) yes();
    });
  });
  port = await new Promise(yes => { const s = createServer().listen(0, '127.0.0.1', () => { const p = s.address().port; s.close(() => yes(p)); }); });
  urls.kept = `http://127.0.0.1:${port}`;
  await startKeeper();
  browser = await launch();
});

after(async () => {
  await browser?.close();
  fixtures?.stdin.end();
  keeper?.removeAllListeners('exit');
  keeper?.kill('SIGKILL');
  rmSync(folder, { recursive: true, force: true });
});

async function startKeeper() {
  keeper = spawn(program, ['-test.run', '^TestServeKept$', '-servekept', `127.0.0.1:${port},${join(folder, 'data')}`], { stdio: ['pipe', 'pipe', 'inherit'] });
  await new Promise((yes, no) => {
    let text = '';
    keeper.on('exit', code => no(new Error(`the program ended early: ${code}`)));
    keeper.stdout.on('data', d => { text += d; if (text.includes('serving kept')) yes(); });
  });
}

async function stopKeeper() {
  keeper.removeAllListeners('exit');
  const gone = new Promise(yes => keeper.once('exit', yes));
  keeper.kill('SIGKILL');
  await gone;
}

async function open(url, { width = 390, height = width < 700 ? 844 : 900, mode = '', walk = '', ...more } = {}) {
  const context = await browser.newContext({ viewport: { width, height }, ...more });
  const base = new URL(url).origin;
  if (mode) await context.addCookies([{ name: 'bedweek-mode', value: mode, url: base }]);
  if (walk) await context.addCookies([{ name: 'bedweek-walk', value: walk, url: base }]);
  const page = await context.newPage();
  page.faults = [];
  page.on('dialog', d => { page.faults.push(`dialog: ${d.message()}`); d.dismiss(); });
  page.on('pageerror', e => page.faults.push(`error: ${e.message}`));
  await page.goto(url);
  return page;
}

const entries = async () => Number((await (await fetch(`${urls.kept}/safe`)).text()).match(/data-label="Entries kept">(\d+)/)[1]);
const until = async (what, ask, ms = 20000) => {
  const end = Date.now() + ms;
  for (;;) {
    if (await ask()) return;
    if (Date.now() > end) assert.fail(`never came: ${what}`);
    await new Promise(r => setTimeout(r, 100));
  }
};

// What must hold of a page in a mode. Targets: 44 px, at the bed 60, big 76;
// a link inside a sentence is not one (WCAG 2.5.8).
const least = { '': 44, dark: 44, bed: 60, big: 76 };
const look = (page, mode) => sound(page, mode || 'plain', least[mode]);

const mine = ['/', '/walk?stop=1', '/walk?stop=2', '/walk?stop=99', '/walk/strip', '/quick', '/quick?what=picked', '/quick?what=wet', '/quick?what=lost', '/modes',
  '/trouble-key', '/trouble-key?sign=gone&space=gate-bed&planting=gate-bed-now', '/trouble-key?who=yes&hour=night'];
const theirs = ['/lines', '/keep', '/table', '/dry', '/weather', '/plan', '/space/gate-bed', '/space/gate-bed/note/picked', '/space/gate-bed/note/lost'];

describe('modes and widths', () => {
  const thin = [['rich', 390, '', mine], ['rich', 390, 'bed', mine.slice(0, 9)], ['rich', 390, 'big', ['/', '/walk?stop=1', '/quick?what=picked']], ['rich', 1280, 'dark', ['/', '/walk?stop=1', '/trouble-key']],
    ['hostile', 390, 'bed', ['/', '/walk?stop=1', '/quick?what=picked', '/walk/strip']], ['empty', 390, '', ['/', '/walk', '/quick?what=picked', '/walk/strip']]];
  const whole = [];
  for (const name of ['rich', 'hostile', 'empty']) for (const width of [320, 390, 1280]) for (const mode of ['', 'dark', 'bed', 'big']) whole.push([name, width, mode, name === 'empty' ? mine : [...mine, ...theirs]]);
  for (const [name, width, mode, list] of full ? whole : thin) {
    test(`${name}, ${width} px, ${mode || 'plain'}`, async () => {
      for (const path of list) {
        const page = await open(urls[name] + path, { width, mode });
        try { await look(page, mode); } catch (e) { e.message = `${path}: ${e.message}`; throw e; }
        await page.context().close();
      }
    });
  }
  test('320 px with text twice as large, at the bed too: no sideways scroll', async () => {
    for (const mode of full ? ['', 'bed', 'big', 'dark'] : ['', 'bed']) {
      for (const path of mine) {
        const page = await open(urls.hostile + path, { width: 320, mode });
        await page.evaluate(() => { document.querySelectorAll('details').forEach(d => { d.open = true; }); const s = new CSSStyleSheet(); s.replaceSync('html{font-size:200%!important}'); document.adoptedStyleSheets = [s]; });
        assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= document.documentElement.clientWidth), `${path} ${mode}`);
        await page.context().close();
      }
    }
  });
  test('a mode is chosen by a plain form, without script, and no setting of the device chooses one', async () => {
    const page = await open(urls.rich + '/modes', { javaScriptEnabled: false, colorScheme: 'dark', contrast: 'more', forcedColors: 'none' });
    assert.equal(await page.locator('html').getAttribute('data-mode'), null);
    await page.getByLabel('At the bed').check();
    await page.getByRole('button', { name: 'Show it so' }).click();
    await page.goto(urls.rich + '/walk?stop=1');
    assert.equal(await page.locator('html').getAttribute('data-mode'), 'bed');
    await page.context().close();
  });
});

describe('a stop', () => {
  for (const [mode, bar, body, heavy] of [['', 88, 17.9, 400], ['bed', 88, 20, 600], ['big', 126, 20, 600]]) {
    test(`three answers of ${bar} px in the thumb half, ${mode || 'plain'}`, async () => {
      const page = await open(`${urls.rich}/walk?stop=2`, { mode });
      const bars = await page.$$eval('.bars3 button', bs => bs.map(b => { const r = b.getBoundingClientRect(); return { words: b.textContent, h: r.height, top: r.top, bottom: r.bottom, left: r.left, right: r.right, size: parseFloat(getComputedStyle(b).fontSize) }; }));
      assert.deepEqual(bars.map(b => b.words), ['Did it', 'Not yet', 'Looks different']);
      for (const [i, b] of bars.entries()) {
        assert.ok(b.h >= bar - 0.5, `${b.words} is ${b.h} px`);
        assert.ok(b.size >= 24, `${b.words} is written at ${b.size} px`);
        assert.ok(b.top >= (mode === 'big' ? 844 * 0.45 : 844 / 2), `${b.words} begins at ${b.top}`);
        assert.ok(b.bottom <= 844, `${b.words} ends at ${b.bottom}`);
        if (i) assert.ok(b.top - bars[i - 1].bottom >= 11.5, '12 px apart');
      }
      const text = await page.$eval('.parts dd', e => ({ size: parseFloat(getComputedStyle(e).fontSize), weight: Number(getComputedStyle(e).fontWeight), ink: getComputedStyle(e).color, paper: getComputedStyle(document.body).backgroundColor }));
      assert.ok(text.size >= body && text.weight >= heavy, `written at ${text.size} px, weight ${text.weight}`);
      assert.equal(text.ink, 'rgb(0, 0, 0)');
      assert.equal(text.paper, 'rgb(255, 255, 255)');
      await page.screenshot({ path: join(shots, `stop-${mode || 'plain'}-390.png`) });
      await page.context().close();
    });
  }
  test('walk to the end without script: did it, not yet, and the end says so', async () => {
    const page = await open(`${urls.rich}/walk`, { javaScriptEnabled: false });
    assert.match(await page.textContent('.where'), /Stop 1 of 4, left side/);
    await page.getByRole('button', { name: 'A bowl' }).click();
    assert.match(await page.textContent('.saved'), /Saved: pick the kale/);
    await page.goto(`${urls.rich}/walk?stop=3`);
    await page.getByRole('button', { name: 'Not yet' }).click();
    assert.match(await page.textContent('.where'), /Stop 4 of 4/);
    assert.match(await page.textContent('.saved'), /not yet/);
    await page.getByRole('link', { name: /End/ }).click();
    assert.equal(await page.textContent('h1'), 'That was the last stop');
    await page.goto(`${urls.rich}/walk?stop=2`);
    await page.getByRole('button', { name: 'Looks different' }).click();
    assert.equal(await page.textContent('h1'), 'What is different?');
    await page.getByRole('link', { name: /trouble key/ }).first().click();
    assert.equal(await page.textContent('h1'), 'What ails it?');
    await page.context().close();
  });
  test('the seated walk keeps what is reached and names who to ask', async () => {
    const page = await open(urls.rich);
    await page.locator('summary', { hasText: 'Whose walk' }).click();
    await page.selectOption('#who', 'ann');
    await page.getByRole('button', { name: 'Make this walk' }).click();
    assert.match(await page.textContent('main'), /For Ann/);
    const stops = await page.$$eval('.stops li', l => l.map(e => e.textContent));
    assert.ok(stops.length > 0 && stops.every(s => /Gate bed|Seed shelf/.test(s)), stops.join('; '));
    await page.locator('summary', { hasText: 'For somebody else' }).click();
    assert.match(await page.textContent('main'), /Out of reach: its rim is 30 cm up.*Ask Ben/s);
    await page.context().close();
  });
});

// Taps are counted, and typing is not allowed: what a finger does between the
// first page and the saved line.
describe('quick notes, in at most three taps', () => {
  async function tapped(t, steps) {
    const was = await entries();
    const page = await open(urls.kept);
    let taps = 0;
    for (const step of steps) { await step(page); taps++; }
    await until('the note is home', async () => (await entries()) === was + 1);
    await page.waitForURL(/saved=/);
    t.diagnostic(`${taps} taps`);
    assert.ok(taps <= 3, `${taps} taps`);
    assert.deepEqual(page.faults, []);
    await page.context().close();
    return taps;
  }
  test('picked a bowl', t => tapped(t, [p => p.getByRole('link', { name: 'Picked' }).click(), p => p.getByRole('button', { name: /A bowl: kale/ }).first().click()]));
  test('damp', t => tapped(t, [p => p.getByRole('link', { name: 'Damp?' }).click(), p => p.getByRole('button', { name: /^Damp: Gate bed/ }).click()]));
  test('a tap while the page still greets home is not left waiting', async () => {
    const was = await entries();
    const page = await open(urls.kept);
    let greeting;
    const begun = new Promise(yes => { greeting = yes; });
    await page.route('**/sync', async route => {
      if (route.request().method() === 'POST' && !route.request().postDataJSON().entries.length) {
        greeting();
        await new Promise(r => setTimeout(r, 1500));
      }
      await route.continue();
    });
    await page.getByRole('link', { name: 'Picked' }).click();
    await begun;
    await page.getByRole('button', { name: /A bowl: kale/ }).first().click();
    await until('the note is home', async () => (await entries()) === was + 1);
    await page.waitForURL(/saved=/);
    await page.context().close();
  });
  test('a photo first, words later', async t => {
    const picture = join(folder, 'bed.png');
    const p = await open(urls.kept + '/modes');
    await p.screenshot({ path: picture });
    await p.context().close();
    await tapped(t, [page => page.getByRole('link', { name: 'Photo' }).click(), page => page.setInputFiles('#photo', picture), page => page.getByRole('button', { name: 'Gate bed' }).click()]);
    const page = await open(`${urls.kept}/quick`);
    await page.getByLabel(/Gate bed.*in a few words/).first().fill('the kale by the gate');
    await page.getByRole('button', { name: 'Save the words' }).first().click();
    assert.match(await page.textContent('.saved'), /words to the picture/);
    await page.goto(`${urls.kept}/space/gate-bed/photos`);
    assert.match(await page.textContent('main'), /the kale by the gate/);
    await page.context().close();
  });
  test('a voice note, played back', async () => {
    const was = await entries();
    const page = await open(`${urls.kept}/quick?what=voice`);
    // a second of silence, as a phone's recorder writes it
    const head = Buffer.alloc(44);
    head.write('RIFF', 0); head.writeUInt32LE(36 + 8000, 4); head.write('WAVEfmt ', 8); head.writeUInt32LE(16, 16); head.writeUInt16LE(1, 20); head.writeUInt16LE(1, 22);
    head.writeUInt32LE(8000, 24); head.writeUInt32LE(8000, 28); head.writeUInt16LE(1, 32); head.writeUInt16LE(8, 34); head.write('data', 36); head.writeUInt32LE(8000, 40);
    await page.setInputFiles('#voice', { name: 'note.wav', mimeType: 'audio/wav', buffer: Buffer.concat([head, Buffer.alloc(8000, 128)]) });
    await page.getByRole('button', { name: 'Gate bed' }).click();
    await page.waitForURL(/saved=/);
    assert.equal(await entries(), was + 1);
    await page.goto(`${urls.kept}/space/gate-bed/photos`);
    const length = await page.$eval('audio', a => new Promise(yes => { a.onloadedmetadata = () => yes(a.duration); a.onerror = () => yes(-1); a.load(); a.preload = 'metadata'; a.load(); }));
    assert.ok(Math.abs(length - 1) < 0.05, `it lasts ${length} s`);
    await page.context().close();
  });
});

test('the questions by keyboard, each in at most 12 steps', async t => {
  const page = await open(urls.rich, { width: 1280 });
  for (const [question, want] of [
    ['what now, here', a => a === '/walk?stop=1'], ['pull or keep', a => a === '/keep'],
    ['what next in each space', a => a === '/lines'], ['who runs dry', a => a === '/dry'], ['is there a gap', a => a === '/table'], ['note a pick', a => a === '/quick?what=picked'],
  ]) {
    await page.goto(urls.rich);
    let steps = 0;
    for (;;) {
      await page.keyboard.press('Tab');
      steps++;
      assert.ok(steps <= 12, `${question}: not reached in 12 steps`);
      const at = await page.evaluate(() => document.activeElement?.getAttribute('href') ?? '');
      if (want(at)) break;
    }
    t.diagnostic(`${question}: ${steps} steps`);
  }
  // a stop is answered by keyboard alone
  await page.goto(`${urls.rich}/walk?stop=3`);
  let steps = 0;
  for (;;) {
    await page.keyboard.press('Tab');
    assert.ok(++steps <= 12, 'the answer is not reached in 12 steps');
    if (await page.evaluate(() => document.activeElement?.value === 'did')) break;
  }
  t.diagnostic(`did it: ${steps} steps`);
  await page.keyboard.press('Enter');
  await page.waitForSelector('.saved');
  await page.context().close();
});

test('a day at the bed without a signal, and home again', async () => {
  const page = await open(urls.kept);
  await until('pages gathered', () => page.evaluate(() => document.documentElement.dataset.gathered === 'yes'), 90000);
  // With a signal the next stop tells what was kept, and lets it be taken back.
  await page.goto(`${urls.kept}/walk?stop=3`);
  await page.getByRole('button', { name: 'Not yet' }).click();
  await page.waitForSelector('.saved');
  assert.match(await page.textContent('.where'), /Stop 4 of 4/);
  assert.match(await page.textContent('.saved'), /not yet/);
  assert.ok((await page.locator('.bars3 button').first().boundingBox()).y < 844, 'the answers are still under the thumb');
  await page.screenshot({ path: join(shots, 'stop-saved-390.png') });
  await page.getByRole('button', { name: 'Take it back' }).click();
  await page.waitForSelector('.saved');
  assert.match(await page.textContent('.saved'), /Taken back/);
  await page.goto(urls.kept);
  await until('pages gathered again', () => page.evaluate(() => document.documentElement.dataset.gathered === 'yes'), 90000);
  const was = await entries();
  await page.context().setOffline(true);
  await stopKeeper();
  // the walk: picked, put off, done, each leading on
  await page.goto(`${urls.kept}/`);
  await page.getByRole('link', { name: /Start the walk/ }).click();
  assert.match(await page.textContent('.where'), /Stop 1 of 4/);
  await page.getByRole('button', { name: 'A bucket' }).click();
  await until('stop 2', async () => /Stop 2 of 4/.test(await page.textContent('.where')));
  await page.getByRole('button', { name: 'Not yet' }).click();
  await until('stop 3', async () => /Stop 3 of 4/.test(await page.textContent('.where')));
  await page.getByRole('button', { name: 'Looked, it is fine' }).click();
  await until('stop 4', async () => /Stop 4 of 4/.test(await page.textContent('.where')));
  // a quick note on the way, with the button that was pressed
  await page.goto(`${urls.kept}/quick?what=wet`);
  await page.getByRole('button', { name: /^Dry: Gate bed/ }).click();
  await until('four wait', async () => /4 notes wait/.test(await page.evaluate(() => document.getElementById('held')?.textContent ?? '')));
  // looks different leads to a form that is at hand
  await page.goto(`${urls.kept}/walk?stop=1`);
  await page.getByRole('button', { name: 'Looks different' }).click();
  await page.waitForURL(/note\/looked/);
  assert.match(await page.textContent('h1'), /Looked/);
  await startKeeper();
  await page.context().setOffline(false);
  await page.goto(`${urls.kept}/unsent`);
  await until('all home', async () => /Everything is home/.test(await page.textContent('#held-count')), 40000);
  assert.equal(await entries(), was + 4);
  assert.deepEqual(page.faults, []);
  await page.context().close();
});

test('the strip on paper: 14 pt, boxes to tick, black, no menu', async () => {
  const page = await open(`${urls.rich}/walk/strip`, { width: 1000 });
  await page.emulateMedia({ media: 'print' });
  const seen = await page.evaluate(() => ({
    small: [...document.querySelectorAll('.strip *')].filter(e => e.childElementCount === 0 && e.textContent.trim() && e.checkVisibility() && parseFloat(getComputedStyle(e).fontSize) < 18.6).map(e => e.textContent.slice(0, 20)),
    ticks: [...document.querySelectorAll('.strip .tick')].filter(e => e.getBoundingClientRect().width > 15).length,
    stops: document.querySelectorAll('.strip li').length,
    columns: getComputedStyle(document.querySelector('.strip')).columnCount,
    menu: document.querySelector('.menu').checkVisibility(),
  }));
  assert.deepEqual(seen.small, []);
  assert.ok(seen.stops > 0 && seen.ticks === seen.stops);
  assert.equal(seen.columns, '2');
  assert.equal(seen.menu, false);
  await page.pdf({ path: join(shots, 'walk-strip.pdf'), preferCSSPageSize: true });
  await page.context().close();
});
