// Keeps the whole handbook on the device and says truly whether it is there. A new edition is offered, never forced.

import { button } from "./small-parts.js";

const box = document.querySelector("[data-offline-status]");
const HOUR = 3_600_000;
let next = 0; // the timer of the next look

const say = (/** @type {string} */ sentence) => {
  if (box && box.textContent !== sentence) box.textContent = sentence;
};

/** @param {() => void} load */
function offerEdition(load) {
  say("A newer edition is ready. ");
  box?.append(button("Load it", load));
}

/** What the device holds of an edition. @param {ServiceWorker} edition @returns {Promise<{total: number, missing: string[]}>} */
function coverage(edition) {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }) => resolve(data);
    edition.postMessage({ kind: "coverage" }, [port2]);
  });
}

/** @param {ServiceWorkerRegistration} registration */
async function report(registration) {
  clearTimeout(next);
  const { active, installing, waiting } = registration;
  if (waiting && active) {
    offerEdition(() => {
      waiting.addEventListener("statechange", () => waiting.state === "activated" && location.reload());
      waiting.postMessage({ kind: "load" });
    });
    return;
  }
  const edition = active ?? waiting ?? installing;
  if (!edition) return say("The offline copy could not be completed. The next page you open tries again.");
  const { total, missing } = await coverage(edition);
  if (!missing.length && edition === active) return say("Ready offline");
  say(`Getting ready for offline: ${total - missing.length} of ${total}`);
  // A browser short of room may have dropped files; the worker stores again what it has to fetch.
  if (edition === active) await Promise.allSettled(missing.map((address) => fetch(address)));
  next = window.setTimeout(report, 1000, registration);
}

async function keep() {
  const workers = navigator.serviceWorker;
  if (!window.isSecureContext) {
    return say("This address works online only. For offline work it has to start with https.");
  }
  if (!workers) return say("This browser keeps no offline copy. The handbook works online only.");
  const registration = await workers.register(new URL("../../sw.js", import.meta.url), { updateViaCache: "none" });
  const watch = () => {
    registration.installing?.addEventListener("statechange", () => report(registration));
    report(registration);
  };
  registration.addEventListener("updatefound", watch);
  watch();
  // Another tab has loaded a newer edition: this one goes on undisturbed until its person says so.
  workers.addEventListener("controllerchange", () => offerEdition(() => location.reload()));
  setInterval(() => registration.update().catch(() => {}), HOUR);
}

keep().catch(() => say("The offline copy could not be started. The handbook works online."));
