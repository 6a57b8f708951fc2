// What the tests of describing a garden share: the program on new folders, and
// a hand that counts what it does.
import { execFileSync, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after } from 'node:test';
import { launch, opener } from './looks.mjs';
import { built } from './server.mjs';

export const root = new URL('..', import.meta.url).pathname;
export const folder = mkdtempSync(join(tmpdir(), 'entry-'));
const running = new Set();
const program = built(folder);
const browser = await launch();

after(async () => {
  await browser.close();
  for (const c of running) c.kill();
  rmSync(folder, { recursive: true, force: true });
});

// helper builds the tests of the pages, which also compare gardens.
export function helper() {
  const to = join(folder, 'pages.test');
  execFileSync('go', ['test', '-c', '-o', to, './internal/web'], { cwd: root, stdio: 'inherit' });
  return to;
}

// serve starts the program on a data folder and returns its address.
export async function serve(data, port = 0, date = '2015-04-06') {
  const child = spawn(program, ['serve', '-date', date, '-port', String(port), join(folder, data)], { stdio: ['ignore', 'pipe', 'ignore'] });
  running.add(child);
  const url = await new Promise((resolve, reject) => {
    let text = '';
    child.on('exit', c => reject(new Error(`ended early: ${c}`)));
    child.stdout.on('data', d => { text += d; const m = text.match(/http:\/\/[^/\s]+/); if (m) resolve(m[0]); });
  });
  return { url, stop: () => new Promise(r => { running.delete(child); child.on('exit', r); child.kill('SIGKILL'); }) };
}

const visit = opener(() => browser, () => '', /status of 4(04|22)/);
export const open = (url, options) => visit(url, 390, options);

// A hand counts what it does: a tap, or a field filled, is one interaction.
// The time is a model, not a person: 2.5 s to find and tap, 3 letters a second.
export class Hand {
  constructor(page) { this.page = page; this.count = 0; this.seconds = 0; }
  async tap(locator) { this.count++; this.seconds += 2.5; await locator.click(); }
  async check(locator) { this.count++; this.seconds += 2.5; await locator.check(); }
  async fill(label, text) { this.count++; this.seconds += 2.5 + text.length / 3; await this.page.locator(`[name="${label}"]`).fill(text); }
  async choose(label, value) { this.count++; this.seconds += 4; await this.page.locator(`[name="${label}"]`).selectOption(value); }
  async save() { await this.tap(this.page.locator('form.form button.main')); await this.page.waitForLoadState(); }
}

export async function firstSpace(page, hand) {
  await hand.choose('town', 'Seattle');
  await hand.save();
  await hand.tap(page.getByRole('link', { name: 'A bag or a pot' }));
  await hand.fill('size', '18 in across');
  await hand.fill('standing', '2 kale, since September 2014, well');
  await hand.save();
  await page.waitForURL(u => u.pathname === '/', { timeout: 60_000 });
}
