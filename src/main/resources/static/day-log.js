// The running clock of the day log. Without script the page shows the times as the server wrote them.
const clock = document.getElementById('clock');

if (clock && clock.dataset.off) {
  const at = name => Date.parse(clock.dataset[name]);
  const ahead = at('now') - Date.now(); // the server's clock is right, not the phone's
  const hoursAndMinutes = ms =>
    Math.floor(ms / 3600000) + ':' + String(Math.floor(ms / 60000) % 60).padStart(2, '0');

  const tick = () => {
    const now = Date.now() + ahead;
    document.getElementById('off').textContent = hoursAndMinutes(now - at('off'));
    const left = document.getElementById('left');
    if (left) {
      const until = at('decide') - now;
      left.textContent = until < 0 ? clock.dataset.over : hoursAndMinutes(until);
      const gone = document.getElementById('gone');
      if (gone) {
        const share = Math.min(1, (now - at('off')) / (at('decide') - at('off')));
        gone.setAttribute('width', (100 * share).toFixed(1) + '%');
      }
    }
  };
  tick();
  setInterval(tick, 5000);
}
