// The two switches of the bench: large controls for gloves, and a screen that stays on. Both are remembered here.

import { store, stored } from "./small-parts.js";

/** @param {string} name @param {(on: boolean) => string | Promise<string>} apply does it and returns the state to show */
function bindSwitch(name, apply) {
  const buttons = document.querySelectorAll(`[data-switch="${name}"]`);
  const slot = `switch ${name}`;
  let on = stored("localStorage", slot) === "on";
  const set = async () => {
    const state = await apply(on);
    for (const button of buttons) {
      button.setAttribute("aria-pressed", String(state === "on"));
      for (const text of button.querySelectorAll("[data-switch-state]")) text.textContent = state;
    }
  };
  for (const button of buttons) {
    button.addEventListener("click", () => {
      on = button.getAttribute("aria-pressed") !== "true";
      store("localStorage", slot, on ? "on" : "");
      set();
    });
  }
  set();
  return set;
}

bindSwitch("glove", (on) => {
  document.documentElement.classList.toggle("glove", on);
  return on ? "on" : "off";
});

/** @type {WakeLockSentinel | undefined} */
let lock;
const setAwake = bindSwitch("awake", async (on) => {
  if (!on) {
    await lock?.release();
    return "off";
  }
  try {
    if (!lock || lock.released) {
      lock = await navigator.wakeLock.request("screen");
      lock.addEventListener("release", () => setAwake()); // the browser took it: show that, or get it back
    }
    return "on";
  } catch {
    return document.hidden ? "off" : "not possible here"; // no HTTPS, a low battery, or a browser without it
  }
});
// The browser lets the lock go when the page is left; take it again on return.
document.addEventListener("visibilitychange", () => setAwake());
