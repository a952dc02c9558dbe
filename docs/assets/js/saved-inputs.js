// Where a filled form is kept: in the address after #, to be sent or bookmarked, and in this tab, for a reload.
// Only fields that differ from the page's preset are written.

/** @typedef {Record<string, string>} Texts */

/**
 * @param {string} calculator
 * @param {Texts} changed
 * @returns {string} this page's address with the inputs
 */
export function linkTo(calculator, changed) {
  const address = new URL(location.href);
  address.hash = new URLSearchParams({ calculator, ...changed }).toString();
  return address.href;
}

/**
 * @param {string} calculator
 * @returns {Texts | undefined} the changed fields, when the address holds this calculator
 */
export function fromAddress(calculator) {
  const { calculator: named, ...changed } = Object.fromEntries(new URLSearchParams(location.hash.slice(1)));
  return named === calculator ? changed : undefined;
}

/** @param {string} key */
const slot = (key) => `inputs ${location.pathname} ${key}`;

/**
 * @param {string} key
 * @param {Texts} changed
 */
export function remember(key, changed) {
  try {
    sessionStorage.setItem(slot(key), JSON.stringify(changed));
  } catch {
    // No storage in this browser: the address still holds the inputs.
  }
}

/**
 * @param {string} key
 * @returns {Texts | undefined}
 */
export function recall(key) {
  try {
    return JSON.parse(sessionStorage.getItem(slot(key)) ?? "null") ?? undefined;
  } catch {
    return undefined;
  }
}
