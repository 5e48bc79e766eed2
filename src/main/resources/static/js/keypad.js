// Keys that write into a field. The field stays an ordinary field for whoever has a keyboard; on a touch screen the
// system's own keyboard stays away while the keypad is there.

const AWAKE_EVERY_MS = 60000;
let touched = 0;

export default function keypad(pad) {
  let field = document.getElementById(pad.dataset.field);
  if (!field) {
    return;
  }
  const fields = beside(field);
  for (const one of fields) {
    one.inputMode = "none";
    one.addEventListener("focus", () => {
      field = one;
    });
  }
  const marks = pad.closest("form, main")?.querySelector(`[data-marks="${CSS.escape(pad.dataset.field)}"]`);
  pad.addEventListener("click", (event) => {
    const key = event.target.closest("[data-key]");
    if (key) {
      field.value = after(field.value, key.dataset.key, Number(field.maxLength));
      field.dispatchEvent(new Event("input", { bubbles: true }));
      stayAwake();
    } else if (event.target.closest(".enter")) {
      goOnTo(fields, field, event);
    }
  });
  if (marks) {
    field.addEventListener("input", () => show(marks, field.value.length));
    show(marks, field.value.length);
  }
}

// The fields of a reading at several points: the keys write into the one that was touched last.
function beside(field) {
  const points = field.closest(".points");
  return points ? [...points.querySelectorAll("input.num")] : [field];
}

// Enter goes to the next point while one is empty, and sends the reading after the last.
function goOnTo(fields, field, event) {
  const empty = fields.filter((one) => one.value === "" && one !== field);
  if (field.value !== "" && empty.length > 0) {
    event.preventDefault();
    const next = empty.find((one) => fields.indexOf(one) > fields.indexOf(field)) ?? empty[0];
    next.focus();
  }
}

function after(text, key, most) {
  switch (key) {
    case "rub-out":
      return text.slice(0, -1);
    case "clear":
      return "";
    case "sign":
      return /^[-−]/.test(text) ? text.slice(1) : `−${text}`;
    case ",":
    case ".":
      return /[.,]/.test(text) ? text : `${text || "0"}${key}`;
    default:
      return most > 0 && text.length + key.length > most ? text : text + key;
  }
}

// One scriber point for each digit keyed; never the digit.
function show(marks, keyed) {
  marks.setAttribute("aria-label", `${keyed} digits keyed`);
  marks.querySelectorAll(".point").forEach((point, place) => point.classList.toggle("set", place < keyed));
}

// Keying counts as being there: the tablet does not lock under somebody's hands.
function stayAwake() {
  const now = Date.now();
  if (now - touched < AWAKE_EVERY_MS || document.querySelector("meta[name=signed-on]")?.content !== "true") {
    return;
  }
  touched = now;
  const token = document.cookie.match(/(?:^|; )XSRF-TOKEN=([^;]+)/)?.[1];
  fetch("/api/v1/sign-on/ping", {
    method: "POST",
    headers: token ? { "X-XSRF-TOKEN": decodeURIComponent(token) } : {},
  }).catch(() => {});
}
