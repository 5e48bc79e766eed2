// Sends forms so that the page stays while the Wi-Fi is away. Without this module the browser sends them itself.
//
// One form is one act: the same content sent again keeps its act id, so that a lost answer is not a second record.
// Changed content is another act and gets another id, else the server would take it for the one it knows.

const PATIENCE_MS = 20000;
// Of a file a browser may tell only now and then how far it is.
const UPLOADING_MS = 60000;
// A large file is worked through before there is an answer.
const READING_MS = 180000;
const sending = new WeakSet();
const sentBefore = new WeakMap();

document.addEventListener("submit", (event) => {
  const form = event.target;
  if (event.defaultPrevented || form.method !== "post" || form.dataset.plain !== undefined) {
    return;
  }
  event.preventDefault();
  if (!sending.has(form)) {
    send(form, event.submitter);
  }
});

// What was refused is told above the sheet: a sheet that was scrolled down comes back where that can be read.
const refused = document.getElementById("refusal");
history.scrollRestoration = refused ? "manual" : "auto";
refused?.scrollIntoView({ block: "nearest" });

// A page out of the browser's memory: its act was carried out, so the next one is new.
window.addEventListener("pageshow", (event) => {
  if (event.persisted) {
    location.reload();
  }
});

async function send(form, button) {
  stamp(form);
  const content = new FormData(form, button);
  keepOrRenew(form, content);
  busy(form, true);
  notice(form, null);
  try {
    const to = button?.getAttribute("formaction") ?? form.getAttribute("action") ?? location.href;
    const answer = await (form.enctype === "multipart/form-data" ? upload(form, to, content) : post(to, content));
    if (answer.onward !== null) {
      open(answer.onward);
    } else if (answer.status >= 502 && answer.status <= 504) {
      away(form);
    } else {
      plainly(form, button);
    }
  } catch {
    away(form);
  }
}

async function post(to, content) {
  const answer = await fetch(to, {
    method: "POST",
    headers: { "Sheet-Sent-By": "script" },
    body: new URLSearchParams(content),
    signal: AbortSignal.timeout(PATIENCE_MS),
  });
  return { status: answer.status, onward: answer.headers.get("Sheet-Go-On-At") };
}

// A file takes as long as it takes: it is away only when nothing of it gets through any more. How far it is, is shown.
function upload(form, to, content) {
  return new Promise((resolve, reject) => {
    const request = new XMLHttpRequest();
    let timer;
    const wait = (ms) => {
      clearTimeout(timer);
      timer = setTimeout(() => request.abort(), ms);
    };
    const end = (done) => () => {
      clearTimeout(timer);
      form.querySelector(".sent-so-far")?.remove();
      done();
    };
    request.open("POST", to);
    request.setRequestHeader("Sheet-Sent-By", "script");
    request.upload.onprogress = (event) => {
      const all = event.lengthComputable && event.loaded >= event.total;
      wait(all ? READING_MS : UPLOADING_MS);
      progress(form, event.loaded, event.total, all);
    };
    request.upload.onload = () => wait(READING_MS);
    request.onload = end(() => resolve({ status: request.status, onward: request.getResponseHeader("Sheet-Go-On-At") }));
    request.onerror = end(reject);
    request.onabort = end(reject);
    wait(UPLOADING_MS);
    request.send(content);
  });
}

function progress(form, sent, total, all) {
  const line = form.querySelector(".sent-so-far") ?? form.appendChild(document.createElement("p"));
  if (!line.className) {
    line.className = "sent-so-far wide";
    line.append(document.createElement("progress"), " ", document.createElement("span"));
    line.firstChild.setAttribute("aria-label", "How much of the file is sent");
  }
  line.firstChild.max = total;
  line.firstChild.value = sent;
  const shown = (bytes) => (bytes / 1e6).toFixed(bytes < 1e7 ? 1 : 0);
  line.lastChild.textContent = all ? "Sent. It is being read." : `${shown(sent)} of ${shown(total)} MB sent`;
}

function stamp(form) {
  for (const field of form.querySelectorAll("input[name=deviceAt]")) {
    field.value = new Date().toISOString();
  }
}

function keepOrRenew(form, content) {
  const id = form.querySelector("input[name=actId]");
  if (!id) {
    return;
  }
  const words = [...content]
    .filter(([name]) => !["actId", "deviceAt", "_csrf"].includes(name))
    .map(([name, value]) => `${name}=${value instanceof File ? `${value.name} ${value.size}` : value}`)
    .join("\n");
  if (sentBefore.has(form) && sentBefore.get(form) !== words) {
    id.value = fresh();
    content.set("actId", id.value);
  }
  sentBefore.set(form, words);
}

// crypto.randomUUID is there on https only; a workshop's network often has none.
function fresh() {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = (bytes[6] & 0x0f) | 0x40;
  bytes[8] = (bytes[8] & 0x3f) | 0x80;
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, "$1-$2-$3-$4-$5");
}

function open(onward) {
  const target = new URL(onward, location.href);
  const here = target.pathname === location.pathname && target.search === location.search;
  if (here && !target.hash) {
    location.reload();
  } else {
    location.assign(target);
  }
}

// The answer is a page of its own: let the browser fetch and show it. Same act id, so nothing is recorded twice.
function plainly(form, button) {
  if (button?.name) {
    const value = document.createElement("input");
    value.type = "hidden";
    value.name = button.name;
    value.value = button.value;
    form.append(value);
  }
  if (button?.hasAttribute("formaction")) {
    form.action = button.formAction;
  }
  HTMLFormElement.prototype.submit.call(form);
}

function away(form) {
  busy(form, false);
  notice(form, "Not sent. The shop’s computer cannot be reached. Try again: it is recorded once.");
}

function busy(form, on) {
  const outside = form.id ? document.querySelectorAll(`button[form="${CSS.escape(form.id)}"]`) : [];
  for (const button of [...form.querySelectorAll("button"), ...outside]) {
    if (button.type === "submit") {
      button.disabled = on;
    }
  }
  if (on) {
    sending.add(form);
  } else {
    sending.delete(form);
  }
}

function notice(form, words) {
  document.querySelector(".strip.unsent")?.remove();
  document.querySelector("[data-behaviour=sending]")?.classList.toggle("away", words !== null);
  if (words === null) {
    return;
  }
  const strip = document.createElement("div");
  strip.className = "strip hold unsent";
  strip.setAttribute("role", "alert");
  strip.tabIndex = -1;
  strip.innerHTML = '<svg class="m m-stopped" aria-hidden="true"><use href="#m-stopped"/></svg><p></p>';
  strip.querySelector("p").textContent = words;
  document.querySelector(".field")?.before(strip);
  strip.focus();
}
