// The two switches of the bench: large controls for gloves, and a screen that stays on. Both are remembered here.

/**
 * @param {string} name
 * @param {(on: boolean) => string | Promise<string>} apply does it and returns the state to show
 */
function bindSwitch(name, apply) {
  const buttons = document.querySelectorAll(`[data-switch="${name}"]`);
  const slot = `switch ${name}`;
  let on = false;
  try {
    on = localStorage.getItem(slot) === "on";
  } catch {
    // No storage in this browser: the switch works until the page is left.
  }
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
      try {
        localStorage.setItem(slot, on ? "on" : "off");
      } catch {
        // as above
      }
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
    lock = undefined;
    return "off";
  }
  try {
    if (!lock || lock.released) lock = await navigator.wakeLock.request("screen");
    return "on";
  } catch {
    return document.hidden ? "off" : "not possible here"; // no HTTPS, a low battery, or a browser without it
  }
});
// The browser lets the lock go when the page is left; take it again on return.
document.addEventListener("visibilitychange", () => setAwake());
