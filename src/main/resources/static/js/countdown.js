// What is left of a clock, in words, counted on the server's time. The page is right as it comes; this keeps it right.
// Minutes while there is an hour or more, seconds only in the last ten minutes.

const MINUTE = 60;
const HOUR = 60 * MINUTE;
const clocks = new Set();
const server = Date.parse(document.querySelector("meta[name=server-time]")?.content ?? "");
const ahead = Number.isNaN(server) ? 0 : server - Date.now();

export default function countdown(time) {
  clocks.add(time);
  if (clocks.size === 1) {
    setInterval(() => clocks.forEach(show), 1000);
  }
  show(time);
}

function show(time) {
  const left = Math.floor((Date.parse(time.dateTime) - (Date.now() + ahead)) / 1000);
  const words = left < 1 ? "no time" : span(left);
  if (time.textContent !== words) {
    time.textContent = words;
  }
  if (left < 1) {
    clocks.delete(time);
    const clock = time.closest(".clock");
    if (clock && time.dataset.after) {
      const words = document.createElement("b");
      words.textContent = time.dataset.after;
      clock.replaceChildren(words);
    }
  }
}

function span(seconds) {
  const minutes = Math.floor(seconds / MINUTE);
  if (minutes < 1) {
    return `${seconds}\u00a0s`;
  }
  if (minutes < 10) {
    return `${minutes}\u00a0min\u00a0${seconds % MINUTE}\u00a0s`;
  }
  if (minutes < 60) {
    return `${minutes}\u00a0min`;
  }
  const hours = Math.floor(seconds / HOUR);
  if (hours < 48) {
    return minutes % 60 === 0 ? `${hours}\u00a0h` : `${hours}\u00a0h\u00a0${minutes % 60}\u00a0min`;
  }
  const days = Math.floor(hours / 24);
  return days < 7 && hours % 24 !== 0 ? `${days}\u00a0days\u00a0${hours % 24}\u00a0h` : `${days}\u00a0days`;
}
