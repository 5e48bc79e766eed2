// A reader types a code very fast and ends it with Enter. Wherever the hand is, the code goes to the scan field; the
// Enter must not press whatever button has the focus.

const FASTEST_HAND_MS = 40;
const SHORTEST_CODE = 4;

export default function scan(form) {
  const field = form.querySelector("input[name=code]");
  let keyed = "";
  let last = 0;
  document.addEventListener(
    "keydown",
    (event) => {
      // A page that opens gives the field its focus in the middle of a code: what came before belongs to it.
      const inField = event.target === field;
      if (event.ctrlKey || event.altKey || event.metaKey || (editable(event.target) && !inField)) {
        return;
      }
      const now = performance.now();
      if (event.key === "Enter") {
        const whole = keyed.length >= SHORTEST_CODE && now - last < 4 * FASTEST_HAND_MS;
        if (whole && (!inField || keyed.endsWith(field.value))) {
          event.preventDefault();
          field.value = keyed;
          form.requestSubmit();
        }
        keyed = "";
      } else if (event.key.length === 1) {
        keyed = now - last > FASTEST_HAND_MS ? event.key : keyed + event.key;
        last = now;
      }
    },
    true,
  );
  if ("BarcodeDetector" in window && navigator.mediaDevices) {
    offerCamera(form, field);
  }
}

function editable(element) {
  return element.closest?.("input:not([type=radio], [type=checkbox]), textarea, select, [contenteditable]") != null;
}

// The camera reads what a reader reads; only where the browser can, and only on https.
function offerCamera(form, field) {
  const button = document.createElement("button");
  button.type = "button";
  button.className = "btn";
  button.textContent = "Read with the camera";
  field.after(button);
  button.addEventListener("click", async () => {
    button.disabled = true;
    const video = document.createElement("video");
    video.muted = true;
    video.playsInline = true;
    video.className = "finder";
    let stream;
    try {
      stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: "environment" } });
      video.srcObject = stream;
      form.append(video);
      await video.play();
      field.value = await read(video);
      form.requestSubmit();
    } catch {
      button.textContent = "The camera cannot be used here";
    } finally {
      stream?.getTracks().forEach((track) => track.stop());
      video.remove();
    }
  });
}

async function read(video) {
  const detector = new window.BarcodeDetector({ formats: ["qr_code", "code_128", "code_39"] });
  for (;;) {
    const [code] = await detector.detect(video);
    if (code) {
      return code.rawValue;
    }
    await new Promise((next) => requestAnimationFrame(next));
  }
}
