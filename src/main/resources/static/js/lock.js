// Whoever keys or taps is there: the device is told once a minute, so that it does not lock under somebody's hands.
// When it has locked, the sheet gives way to the sign-on sheet and does not stay open for the next passer-by.

const TOLD_EVERY_MS = 60000;

export default function lock() {
  if (document.querySelector("meta[name=signed-on]")?.content !== "true") {
    return;
  }
  let told = Date.now();
  for (const touch of ["input", "keydown", "pointerdown"]) {
    document.addEventListener(
      touch,
      () => {
        if (Date.now() - told > TOLD_EVERY_MS) {
          told = Date.now();
          ask("/api/v1/sign-on/ping", "POST").catch(() => {});
        }
      },
      { capture: true, passive: true },
    );
  }
  setTimeout(look, TOLD_EVERY_MS);
}

async function look() {
  let next = TOLD_EVERY_MS;
  try {
    const answer = await ask("/api/v1/sign-on", "GET");
    const state = answer.ok ? await answer.json() : null;
    if (state !== null && state.person === null) {
      location.assign(`/sign-on?next=${encodeURIComponent(location.pathname + location.search)}`);
      return;
    }
    next = Math.max(5000, ((state?.locksInSeconds ?? 0) + 1) * 1000);
  } catch {
    // Away from the Wi-Fi: looked at again in a minute.
  }
  setTimeout(look, next);
}

function ask(path, method) {
  const token = document.cookie.match(/(?:^|; )XSRF-TOKEN=([^;]+)/)?.[1];
  const headers = method === "GET" ? { Quiet: "yes" } : {};
  if (token) {
    headers["X-XSRF-TOKEN"] = decodeURIComponent(token);
  }
  return fetch(path, { method, headers });
}
