// What every browser test asks of a page, and how it opens one.
import assert from 'node:assert/strict';
import { mkdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { chromium } from 'playwright-core';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

// shots is the folder of the pictures.
export const shots = new URL('../shots', import.meta.url).pathname;
mkdirSync(shots, { recursive: true });

// closing makes a context that does not close within ten seconds no longer
// waited for: Chromium may lose the order to close one while a page of it begins
// a navigation, and then never answers. The end of the browser takes it along.
export const closing = browser => {
  const make = browser.newContext.bind(browser);
  browser.newContext = async options => {
    const context = await make(options);
    const close = context.close.bind(context);
    context.close = () => {
      let bell;
      return Promise.race([close(), new Promise(yes => { bell = setTimeout(yes, 10_000); })]).finally(() => clearTimeout(bell));
    };
    return context;
  };
  return browser;
};

// launch starts Chromium with no way out: every name but this machine's is
// unknown to it. names maps more, as "MAP garden.test 127.0.0.1, ".
export const launch = async (names = '') => closing(await chromium.launch({
  executablePath: process.env.CHROMIUM || '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-background-networking', '--disable-component-update', '--no-first-run',
    `--host-resolver-rules=${names}MAP * ~NOTFOUND, EXCLUDE 127.0.0.1`],
}));

// opener returns what opens an address in a context of its own and gathers its
// errors in page.faults, those that match spared left out. browser and base
// are asked for at each page.
export const opener = (browser, base = () => '', spared = /^$/) => async (path, width = 390, options = {}) => {
  const context = await browser().newContext({ viewport: { width, height: width < 700 ? 844 : 900 }, ...options });
  const page = await context.newPage();
  page.setDefaultTimeout(60_000);
  page.faults = [];
  page.on('dialog', d => { page.faults.push(`dialog: ${d.message()}`); d.dismiss(); });
  page.on('pageerror', e => page.faults.push(`error: ${e.message}`));
  page.on('console', m => { if (m.type() === 'error' && !spared.test(m.text())) page.faults.push(m.text()); });
  const answer = await page.goto(base() + path);
  page.status = answer.status();
  return page;
};

export const unfold = page => page.evaluate(() => document.querySelectorAll('details').forEach(d => { d.open = true; }));

// wide lists what sticks out of the page on the right; what scrolls in a frame
// of its own may.
export const wide = page => page.evaluate(() => {
  const most = document.documentElement.clientWidth;
  if (document.documentElement.scrollWidth <= most) return [];
  return [...document.querySelectorAll('body *')].filter(e => !e.closest('.across') && e.getBoundingClientRect().right > most + 1).slice(0, 5)
    .map(e => `${e.tagName}.${e.getAttribute('class') ?? ''} ${Math.round(e.getBoundingClientRect().right)}`);
});

// small lists what can be touched and is under so many px either way. A radio
// button or a box to tick counts with its label, which is touched for it.
export const small = (page, least = 44) => page.evaluate(least =>
  [...document.querySelectorAll('a[href], button, summary, select, textarea, input:not([type=hidden])')]
    .filter(e => !e.classList.contains('skip') && e.checkVisibility())
    .map(e => [e, ((/radio|checkbox/.test(e.type) && e.closest('label')) || e).getBoundingClientRect()])
    .filter(([, r]) => r.width < least - 0.5 || r.height < least - 0.5)
    .map(([e, r]) => `${e.tagName} "${(e.textContent || e.name).trim().slice(0, 30)}" ${Math.round(r.width)}x${Math.round(r.height)}`), least);

// unseen lists fields and buttons that stay out of sight with everything folded
// out, so that nobody could use them; what is hidden on purpose says so.
export const unseen = page => page.evaluate(() =>
  [...document.querySelectorAll('input:not([type=hidden]), select, textarea, button')].filter(e => !e.checkVisibility() && !e.closest('[hidden]'))
    .map(e => `${e.tagName} "${e.name}"`));

// axeFaults are what WCAG 2.2 AA, best practice and a contrast of 7:1 find; or
// the rules named.
export async function axeFaults(page, rules) {
  if (!await page.evaluate(() => Boolean(window.axe))) await page.evaluate(axe);
  const found = await page.evaluate(async rules => {
    const r = await window.axe.run(document, rules ? { runOnly: { type: 'rule', values: rules } } : {
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'], rules: { 'color-contrast-enhanced': { enabled: true } } });
    return { passes: r.passes.length, faults: r.violations.map(v => `${v.id}: ${v.nodes[0].html.slice(0, 160)}`) };
  }, rules);
  assert.ok(rules || found.passes > 10, 'axe looked at the page');
  return found.faults;
}

// sound asks all of it, with everything folded out; typed markup must have
// stayed text.
export async function sound(page, word, least = 44) {
  await unfold(page);
  assert.deepEqual(await unseen(page), [], `${word}: out of sight`);
  assert.deepEqual(await wide(page), [], `${word}: sticks out`);
  assert.deepEqual(await small(page, least), [], `${word}: too small`);
  assert.deepEqual(await axeFaults(page), [], word);
  assert.equal(await page.locator('main em').count(), 0, `${word}: typed markup became markup`);
  assert.deepEqual(page.faults, [], word);
}

// large makes text twice as large on a phone of 320 px.
export async function large(page) {
  const cdp = await page.context().newCDPSession(page);
  await cdp.send('Emulation.setDeviceMetricsOverride', { width: 320, height: 640, deviceScaleFactor: 1, mobile: false });
  await unfold(page);
  await page.evaluate(() => { const s = new CSSStyleSheet(); s.replaceSync('html{font-size:200%!important}'); document.adoptedStyleSheets = [s]; });
}

// unprintable lists text that paper would show under 14 pt or not black.
export async function unprintable(page) {
  await page.emulateMedia({ media: 'print' });
  return page.evaluate(() => {
    const out = [];
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walk.nextNode()) {
      const e = walk.currentNode.parentElement;
      if (!walk.currentNode.data.trim() || !e.checkVisibility() || e.closest('svg') || e.closest('.skip')) continue;
      const s = getComputedStyle(e);
      if (parseFloat(s.fontSize) < 18.6 || s.color !== 'rgb(0, 0, 0)') out.push(`${e.tagName}.${e.className} ${s.fontSize} ${s.color} ${e.textContent.slice(0, 30)}`);
    }
    return out;
  });
}
