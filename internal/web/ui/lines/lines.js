// Tapping a line of the picture asks why it is there. The table's links do the
// same without script.
for (const p of document.querySelectorAll('[data-tap]')) p.hidden = false;
for (const svg of document.querySelectorAll('svg.lines')) {
  svg.classList.add('tappable');
  svg.addEventListener('click', e => {
    const line = e.target.closest('[data-why]');
    if (line) location.assign(line.dataset.why);
  });
}
