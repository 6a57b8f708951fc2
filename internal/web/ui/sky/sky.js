// Chooses the direction of a correction by a tap on the picture, and marks it
// there. The page works without: the list of directions does the same.
'use strict';
(() => {
  const svg = document.querySelector('.skyline > svg');
  const list = document.getElementById('bearing');
  const here = document.getElementById('here');
  if (!svg || !list || !here) return;
  document.documentElement.classList.add('script');
  const { left, right, from, wide } = svg.dataset;
  const span = Number(right) - Number(left);
  const place = bearing => {
    const off = (((bearing - Number(left)) % 360) + 360) % 360;
    return Number(from) + Number(wide) * Math.min(off / span, 1);
  };

  const mark = () => {
    const x = place(Number(list.value)).toFixed(1);
    here.setAttribute('d', `M${x} 6V${here.dataset.tall}`);
  };

  svg.addEventListener('click', e => {
    const box = svg.getBoundingClientRect();
    const x = (e.clientX - box.left) * svg.viewBox.baseVal.width / box.width;
    let best = null;
    for (const o of list.options) {
      if (!best || Math.abs(place(Number(o.value)) - x) < Math.abs(place(Number(best.value)) - x)) best = o;
    }
    if (!best) return;
    list.value = best.value;
    mark();
    list.focus({ preventScroll: true });
  });
  list.addEventListener('change', mark);
  mark();
})();
