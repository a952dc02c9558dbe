// What several of the scripts need: elements with text, a button, and storage that may be refused.

/** @template {keyof HTMLElementTagNameMap} Tag @param {Tag} tag @param {string} [text] @param {string} [kind] its class */
export function piece(tag, text = "", kind = "") {
  const made = document.createElement(tag);
  made.textContent = text;
  if (kind) made.className = kind;
  return made;
}

/** @param {string} label @param {() => void} action */
export function button(label, action) {
  const made = piece("button", label);
  made.type = "button";
  made.addEventListener("click", action);
  return made;
}

/** @typedef {"localStorage" | "sessionStorage"} Place */

/** Store a text, or with an empty one forget it. @param {Place} place @param {string} key @param {string} text */
export function store(place, key, text) {
  try {
    if (text) window[place].setItem(key, text);
    else window[place].removeItem(key);
  } catch {
    // No storage in this browser: the page works until it is left.
  }
}

/** @param {Place} place @param {string} key */
export function stored(place, key) {
  try {
    return window[place].getItem(key) ?? "";
  } catch {
    return "";
  }
}
