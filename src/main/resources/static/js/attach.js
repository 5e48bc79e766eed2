// Attaches what an element's data-behaviour names. The shell lists every module with its address, which carries the
// file's hash, so a module is fetched once and only where a page needs it.
import(address("send"));

function address(behaviour) {
  return document.querySelector(`link[rel=modulepreload][data-module="${behaviour}"]`)?.href;
}

for (const element of document.querySelectorAll("[data-behaviour]")) {
  for (const behaviour of element.dataset.behaviour.split(" ")) {
    const from = address(behaviour);
    if (from) {
      import(from).then((module) => module.default(element));
    }
  }
}
