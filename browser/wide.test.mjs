// The wide set: every page of wide.json at three widths, in two sizes of text,
// in four modes, of four gardens (full, hostile, empty, new) and of the invented
// days. Only in the full tier: BEDWEEK_TIER=full BEDWEEK_BIN=… node --test wide.test.mjs
// BEDWEEK_ONLY names gardens, divided by commas, to look at no others;
// BEDWEEK_URL looks at a running program in place of all of them.
// A test in internal/web fails when a page of the server is not in the list.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { axeFaults, launch, opener, small, unfold, wide } from './looks.mjs';
import { run, start } from './server.mjs';

const list = Object.values(JSON.parse(readFileSync(new URL('wide.json', import.meta.url)))).filter(Array.isArray).flat();
const widths = [320, 390, 1280], modes = { plain: 44, dark: 44, bed: 60, big: 76 };
const only = process.env.BEDWEEK_ONLY?.split(',');
const weather = ['-weather', 'demo/seattle-weather.csv', '-date', '2015-04-15', '-port', '0'];
const programs = {
  full: [folder => ['demo', '-date', '2015-08-24', '-port', '0', '-data', join(folder, 'data')]],
  hostile: [folder => ['serve', '-garden', 'browser/hostile-garden.yaml', ...weather, join(folder, 'data')]],
  empty: [folder => ['serve', '-garden', 'browser/empty-garden.yaml', ...weather, join(folder, 'data')]],
  new: [folder => ['serve', '-port', '0', join(folder, 'data')], /http:/],
};
const skip = process.env.BEDWEEK_TIER !== 'full' && 'the full tier only';
let browser;

before(async () => { if (!skip) browser = await launch(); });
after(() => browser?.close());

// Without a service worker: it would gather every page anew for each look.
const open = opener(() => browser, () => '', /status of (401|403|404|410|422)|service ?worker/i);
const bare = { serviceWorkers: 'block' };

// links finds what the braces of the list stand for: the first of each kind
// that the garden's own pages lead to.
async function links(url) {
  const found = {};
  const kinds = { space: /^\/space\/([^/?]+)$/, sky: /^\/sky\/([^/?]+)/, why: /^\/why\/([^/?]+)/, turnover: /^\/turnover\/([^/?]+)/, year: /^\/year\/([^/?]+)/, lot: /^\/lot\/([^/?]+)/,
    plant: /^\/plant\/([^/?]+)/, which: /^\/which\/([^/?]+)/, backup: /^\/restore\?backup=([^&]+)/ };
  await fetch(`${url}/backup`, { method: 'POST', headers: { Origin: url }, redirect: 'manual' });
  const page = await open(url, 1280, bare);
  const gather = async path => {
    await page.goto(url + path);
    const seen = await page.evaluate(() => ({ task: document.querySelector('input[name=task]')?.value, hrefs: [...document.querySelectorAll('[href], [data-why]')].map(e => e.getAttribute('data-why') ?? e.getAttribute('href')) }));
    if (seen.task) found.task ??= encodeURIComponent(seen.task);
    for (const [kind, of] of Object.entries(kinds)) found[kind] ??= seen.hrefs.map(h => h.match(of)?.[1]).find(Boolean);
  };
  for (const path of ['/', '/walk?stop=1', '/lines', '/seeds', '/light', '/turnover', '/year', '/safe']) await gather(path);
  for (const kind of ['space', 'plant']) if (found[kind]) await gather(`/${kind}/${found[kind]}`);
  await page.context().close();
  found.line = found.why;
  return found;
}

// places are the addresses of the list that the garden has.
const places = found => list.map(path => path.replace(/\{(\w+)\}/g, (all, kind) => found[kind] ?? all)).filter(path => !path.includes('{'));

const scale = (page, percent) => page.evaluate(percent => {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(`html{font-size:${percent}%!important}`);
  document.adoptedStyleSheets = percent === 100 ? [] : [sheet];
}, percent);

// Of axe's rules these can change with the width or the size of text; the others
// are asked once in each mode on a phone, and once at a desk.
const moving = ['target-size', 'scrollable-region-focusable'];
const whole = (mode, width, percent) => percent === 100 && (width === 390 || (width === 1280 && mode === 'plain'));

// views looks at one page in one mode at every width and size of text.
async function views(url, path, mode, seen) {
  const options = mode === 'plain' ? bare : { ...bare, storageState: { cookies: [{ name: 'bedweek-mode', value: mode, domain: '127.0.0.1', path: '/', expires: -1, httpOnly: false, secure: false, sameSite: 'Lax' }], origins: [] } };
  const page = await open(url + path, 390, options);
  for (let i = 0; i < 240 && await page.getByText('The page comes back by itself').count(); i++) await page.waitForTimeout(500);
  const at = new URL(page.url()).pathname;
  if (page.status >= 500 && page.status !== 503) seen.faults.push(`${path}: ${page.status}`);
  if (seen.asked.has(mode + at + page.status) && at !== new URL(url + path).pathname) return page.context().close(); // sent on to a page that was looked at
  seen.asked.add(mode + at + page.status);
  if (page.status === 200) seen.pages.add(path);
  for (const width of widths) {
    await page.setViewportSize({ width, height: width < 700 ? 844 : 900 });
    for (const percent of [100, 200]) {
      await scale(page, percent);
      await unfold(page);
      const faults = { 'sticks out': await wide(page), 'too small': await small(page, modes[mode]), axe: await axeFaults(page, whole(mode, width, percent) ? undefined : moving) };
      for (const [what, of] of Object.entries(faults)) for (const one of of) seen.faults.push(`${path} ${mode} ${width} px ${percent} %: ${what}: ${one}`);
      seen.views++;
    }
  }
  if (await page.locator('main em').count()) seen.faults.push(`${path}: typed markup became markup`);
  for (const fault of page.faults) seen.faults.push(`${path} ${mode}: ${fault}`);
  console.error(`${path} ${mode}: ${seen.faults.length} faults so far`); // a run takes an hour: it says where it is
  await page.context().close();
}

// all looks at every place in every mode, a few at a time.
async function all(t, url, least) {
  const paths = places(await links(url));
  const queue = paths.flatMap(path => Object.keys(modes).map(mode => [path, mode]));
  const seen = { pages: new Set(), asked: new Set(), views: 0, faults: [] };
  await Promise.all([1, 2, 3].map(async () => { for (let next; (next = queue.shift());) await views(url, ...next, seen).catch(e => seen.faults.push(`${next.join(' ')}: ${e.message}`)); }));
  t.diagnostic(`${seen.pages.size} pages, ${seen.views} views, ${seen.faults.length} faults`);
  if (seen.faults.length > 0) for (const fault of seen.faults) t.diagnostic(fault);
  assert.ok(seen.views >= seen.pages.size * 24);
  assert.deepEqual(seen.faults, []);
  assert.ok(seen.pages.size >= least, `only ${seen.pages.size} pages were there`);
}

for (const [name, [args, ready]] of Object.entries(programs)) {
  if (process.env.BEDWEEK_URL || (only && !only.includes(name))) continue;
  test(`every page in every view: the ${name} garden`, { skip }, async t => {
    const program = await run(args, ready);
    try { await all(t, program.url, { full: 90, hostile: 85, empty: 60, new: 4 }[name]); } finally { await program.stop(); }
  });
}

test('every page in every view: the program that runs', { skip: skip || (!process.env.BEDWEEK_URL && 'none was given') }, t => all(t, process.env.BEDWEEK_URL, 12));

test('every page in every view: the invented days', { skip: skip || (process.env.BEDWEEK_URL && 'a program was given') || (only && !only.includes('days') && 'not asked for') }, async t => {
  const server = await start();
  try {
    for (const name of ['rich', 'hostile', 'empty']) await t.test(name, t => all(t, server.urls[name], { rich: 40, hostile: 40, empty: 20 }[name]));
  } finally { server.stop(); }
});
