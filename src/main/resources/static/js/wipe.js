// For ten seconds taps are ignored, so that a glove can wipe the glass and tick nothing.

const SECONDS = 10;

export default function wipe(button) {
  button.hidden = false;
  const words = button.textContent;
  button.addEventListener("click", () => {
    const still = [...document.querySelectorAll(".field, .tb > :not(.tb-wipe), .refusal")];
    still.forEach((part) => (part.inert = true));
    document.body.classList.add("wiping");
    let left = SECONDS;
    button.disabled = true;
    button.textContent = `Wipe now, ${left} s`;
    const clock = setInterval(() => {
      left -= 1;
      button.textContent = `Wipe now, ${left} s`;
      if (left === 0) {
        clearInterval(clock);
        still.forEach((part) => (part.inert = false));
        document.body.classList.remove("wiping");
        button.disabled = false;
        button.textContent = words;
        button.focus();
      }
    }, 1000);
  });
}
