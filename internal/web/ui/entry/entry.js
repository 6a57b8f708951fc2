// Makes forms about the garden safer and quicker. Without it they work alike.
// What is typed is kept on this phone until the form is saved, so that a call,
// a lost connection or a closed page loses nothing.
const form = document.querySelector('form[data-keep]');
const store = { get: k => { try { return localStorage.getItem(k); } catch { return null; } }, set: (k, v) => { try { localStorage.setItem(k, v); } catch { /* no room: the form works without */ } }, drop: k => { try { localStorage.removeItem(k); } catch { /* nothing kept */ } } };

if (document.querySelector('.saved')) {
  const sent = store.get('bedweek sent');
  if (sent) { store.drop(sent); store.drop('bedweek sent'); }
}

if (form && (!form.enctype.startsWith('multipart') || form.dataset.keep === '/entry/space')) { // a file cannot be put back, words can
  const key = `bedweek ${location.pathname}${location.search}`;
  const fields = () => [...form.elements].filter(e => e.name && e.type !== 'hidden' && e.type !== 'submit' && e.type !== 'file');
  const value = e => (e.type === 'radio' || e.type === 'checkbox' ? e.checked : e.value);
  const first = JSON.stringify(fields().map(value));
  let kept = null;
  try { kept = JSON.parse(store.get(key)); } catch { kept = null; }
  const failed = document.querySelector('.problem');
  if (kept && !failed && kept.first === first && kept.now.length === fields().length) {
    fields().forEach((e, i) => { if (typeof kept.now[i] === 'boolean') e.checked = kept.now[i]; else e.value = kept.now[i]; });
    const said = document.createElement('p');
    said.setAttribute('role', 'status');
    said.textContent = 'What you typed here before is back. It is not saved yet.';
    form.before(said);
  }
  form.addEventListener('input', () => store.set(key, JSON.stringify({ first, now: fields().map(value) })));
  form.addEventListener('submit', () => store.set('bedweek sent', key));
}

const locate = document.getElementById('locate');
if (locate && navigator.geolocation) {
  locate.parentElement.hidden = false;
  locate.addEventListener('click', () => {
    locate.textContent = 'Asking…';
    navigator.geolocation.getCurrentPosition(p => {
      const side = (x, a, b) => `${Math.abs(x).toFixed(3)} ${x < 0 ? b : a}`;
      const at = document.getElementById('x-at');
      at.value = `${side(p.coords.latitude, 'N', 'S')}, ${side(p.coords.longitude, 'E', 'W')}`;
      at.dispatchEvent(new Event('input', { bubbles: true }));
      locate.textContent = 'Taken from where you stand';
    }, () => { locate.textContent = 'The browser does not say. Choose a place near you.'; });
  });
}
