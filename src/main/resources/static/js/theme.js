// Changes between the paper and the night sheet at once. Without this module the button loads the page again.

const YEAR_S = 365 * 24 * 3600;

export default function theme(form) {
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const button = form.querySelector("button");
    const next = button.value;
    document.documentElement.dataset.theme = next;
    document.cookie = `trammel-theme=${next}; path=/; max-age=${YEAR_S}; samesite=strict`;
    button.value = next === "night" ? "paper" : "night";
    button.textContent = next === "night" ? "Paper sheet" : "Night sheet";
  });
}
