// Prints the page; without this module the browser's own command does.
export default function print(button) {
  button.addEventListener("click", () => window.print());
}
