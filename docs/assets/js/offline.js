// Keeps the whole handbook on the device and says truly whether it is there. A new edition is offered, never forced.

const box = document.querySelector("[data-offline-status]");
const HOUR = 3_600_000;

/**
 * @param {string} sentence
 * @param {string} [offer] label of a button beside it
 * @param {() => void} [accept]
 */
function say(sentence, offer, accept) {
  if (!box || (box.textContent === sentence && !offer)) return;
  box.textContent = sentence;
  if (!offer || !accept) return;
  const button = document.createElement("button");
  button.type = "button";
  button.textContent = offer;
  button.addEventListener("click", accept);
  box.append(button);
}

/**
 * Ask an edition's worker which of its files are not on the device.
 * @param {ServiceWorker} edition
 * @returns {Promise<{total: number, missing: string[]}>}
 */
function coverage(edition) {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }) => resolve(data);
    edition.postMessage({ kind: "coverage" }, [port2]);
  });
}

/** @param {ServiceWorker} edition */
function loadEdition(edition) {
  edition.addEventListener("statechange", () => edition.state === "activated" && location.reload());
  edition.postMessage({ kind: "load" });
}

/** @param {ServiceWorkerRegistration} registration */
async function report(registration) {
  const { active, installing, waiting } = registration;
  if (waiting && active) {
    say("A newer edition is ready. ", "Load it", () => loadEdition(waiting));
    return;
  }
  const edition = active ?? waiting ?? installing;
  if (!edition) {
    say("The offline copy could not be completed. The next page you open tries again.");
    return;
  }
  const { total, missing } = await coverage(edition);
  if (edition.state === "redundant") return void report(registration);
  if (!missing.length && edition === active) {
    say("Ready offline");
  } else {
    say(`Getting ready for offline: ${total - missing.length} of ${total}`);
    // A browser short of room may have dropped files; the worker stores again what it has to fetch.
    if (edition === active) await Promise.allSettled(missing.map((address) => fetch(address)));
  }
  if (missing.length || registration.installing) setTimeout(() => report(registration), 1000);
}

async function keep() {
  const workers = navigator.serviceWorker;
  if (!window.isSecureContext)
    return say("This address works online only. For offline work it has to start with https.");
  if (!workers) return say("This browser keeps no offline copy. The handbook works online only.");
  const script = new URL("../../sw.js", import.meta.url);
  const registration = await workers.register(script, { updateViaCache: "none" });
  const watch = () => {
    const arriving = registration.installing;
    arriving?.addEventListener("statechange", () => report(registration));
    report(registration);
  };
  registration.addEventListener("updatefound", watch);
  watch();
  // Another tab has loaded a newer edition: this one goes on undisturbed until its person says so.
  workers.addEventListener("controllerchange", () => {
    say("A newer edition is ready. ", "Load it", () => location.reload());
  });
  setInterval(() => registration.update().catch(() => {}), HOUR);
}

keep().catch(() => say("The offline copy could not be started. The handbook works online."));
