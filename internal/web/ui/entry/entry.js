// Makes forms about the garden safer and quicker. Without it they work alike.
// What is typed is kept on this phone until the form is saved, so that a call,
// a lost connection or a closed page loses nothing.
const form = document.querySelector('form[data-keep]');
const store = { get: k => { try { return localStorage.getItem(k); } catch { return null; } }, set: (k, v) => { try { localStorage.setItem(k, v); } catch { /* no room: the form works without */ } }, drop: k => { try { localStorage.removeItem(k); } catch { /* nothing kept */ } } };

if (document.querySelector('.saved')) {
  for (const sent of (store.get('bedweek sent') ?? '').split('\n')) store.drop(sent);
  store.drop('bedweek sent');
}

if (form) { // a file cannot be put back, words can
  const keyOf = page => `bedweek ${page}${location.search}`;
  const key = keyOf(form.dataset.keep);
  const fields = () => [...form.elements].filter(e => e.name && !e.hidden && e.type !== 'hidden' && e.type !== 'submit' && e.type !== 'file');
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
  // With a later page of several, what was typed on the first is done with too.
  form.addEventListener('submit', () => store.set('bedweek sent', [key, ...(form.dataset.from ? [keyOf(form.dataset.from)] : [])].join('\n')));
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

// Pointing the phone: which way its top looks, told as a side and never finer
// than a compass can be. Without sensors, or without leave, nothing is shown or
// the page says so; the noon shadow stays.
const point = document.querySelector('.point');
if (point && window.DeviceOrientationEvent) {
  const says = point.querySelector('.says');
  const button = what => point.querySelector(`[data-do=${what}]`);
  const pole = Number(point.dataset.pole);
  const off = Number(point.dataset.off); // magnetic north, degrees east of true
  const apart = (a, b) => Math.abs(((a - b + 540) % 360) - 180);
  const words = ['north', 'north-east', 'east', 'south-east', 'south', 'south-west', 'west', 'north-west'];
  const sides = [['pole', pole], ['equator', (pole + 180) % 360], ['east', 90], ['west', 270]];
  const sure = 25; // degrees from a side's middle line within which it is told
  let seen = [];
  let now = null; // { side, heading }
  point.hidden = false;

  // The way the phone's top looks, degrees from true north; null = not known.
  // Phones tell it from magnetic north.
  const headingOf = e => {
    if (typeof e.webkitCompassHeading === 'number' && !(e.webkitCompassAccuracy < 0)) return (e.webkitCompassHeading + off + 360) % 360;
    return e.absolute && typeof e.alpha === 'number' ? (720 - e.alpha + off) % 360 : null;
  };
  const tell = (text, side = null, heading = null) => {
    if (says.textContent !== text) says.textContent = text;
    now = heading === null ? null : { side, heading };
    button('side').hidden = side === null;
    button('turn').hidden = heading === null;
  };
  const turned = e => {
    const heading = headingOf(e);
    if (heading === null) return;
    if (Math.abs(e.beta ?? 0) > 35 || Math.abs(e.gamma ?? 0) > 35) { seen = []; tell('Hold it flat.'); return; }
    const t = e.timeStamp || performance.now();
    seen = [...seen.filter(s => t - s.t < 1500), { t, heading }];
    if (seen.some(s => apart(s.heading, heading) > 20)) { tell('It swings. Hold it still, or move away from metal.'); return; }
    const give = typeof e.webkitCompassAccuracy === 'number' ? ` The phone says: ${Math.round(e.webkitCompassAccuracy)} degrees or so either way.` : '';
    const way = words[Math.round(heading / 45) % 8];
    const [side, middle] = sides.reduce((a, b) => (apart(b[1], heading) < apart(a[1], heading) ? b : a));
    if (apart(middle, heading) > sure) tell(`It looks about ${way}: between two sides. Look where the noon shadow falls.${give}`, null, heading);
    else tell(`It looks about ${way}: the ${side} side.${give}`, side, heading);
  };
  button('ask').addEventListener('click', async () => {
    tell('Asking the phone…');
    try {
      if (typeof DeviceOrientationEvent.requestPermission === 'function' && await DeviceOrientationEvent.requestPermission() !== 'granted') {
        tell('The phone does not let the page see its compass. The noon shadow tells the same.');
        return;
      }
    } catch { tell('The phone does not let the page see its compass. The noon shadow tells the same.'); return; }
    addEventListener('deviceorientationabsolute', turned);
    addEventListener('deviceorientation', turned);
    setTimeout(() => { if (!seen.length && says.textContent === 'Asking the phone…') tell('This device has no compass the page can read. The noon shadow tells the same.'); }, 3000);
  });
  const write = (id, text) => {
    const e = document.getElementById(id);
    e.value = text(e.value);
    for (let d = e.closest('details'); d; d = d.parentElement.closest('details')) d.open = true;
    e.dispatchEvent(new Event('input', { bubbles: true }));
    e.focus();
  };
  button('side').addEventListener('click', () => {
    if (!now?.side) return;
    const { side } = now;
    write('x-supports', v => {
      const lines = v.trimEnd().split('\n');
      const last = lines.pop().replace(/,?\s*(pole|equator|east|west|middle)( side)?\s*$/i, '');
      return [...lines, `${last}${last ? ', ' : ''}${side} side`].join('\n');
    });
  });
  button('turn').addEventListener('click', () => {
    if (!now) return;
    const turn = (Math.round((now.heading + 270) / 5) * 5) % 180; // from a long side that runs east-west
    const where = document.getElementById('x-where');
    if (!where.value.trim()) { says.textContent = 'Say where it stands first, then take this again.'; where.focus(); return; }
    write('x-where', v => v.replace(/,?\s*turned [^,]*/i, '').trim() + (turn ? `, turned ${turn} degrees` : ''));
  });
}
