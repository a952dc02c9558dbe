// Where a filled form is kept: in the address after #, to be sent or bookmarked, and in this tab, for a reload.
// Only fields that differ from the page's preset are written.

import { store, stored } from "./small-parts.js";

/** @typedef {Record<string, string>} Texts */

/** This page's address with the inputs. @param {string} calculator @param {Texts} changed */
export function linkTo(calculator, changed) {
  const address = new URL(location.href);
  address.hash = new URLSearchParams({ calculator, ...changed }).toString();
  return address.href;
}

/** The changed fields, when the address holds this calculator. @param {string} calculator @returns {Texts | undefined} */
export function fromAddress(calculator) {
  const { calculator: named, ...changed } = Object.fromEntries(new URLSearchParams(location.hash.slice(1)));
  return named === calculator ? changed : undefined;
}

const slot = (/** @type {string} */ key) => `inputs ${location.pathname} ${key}`;

/** @param {string} key @param {Texts} changed */
export function remember(key, changed) {
  store("sessionStorage", slot(key), Object.keys(changed).length ? JSON.stringify(changed) : "");
}

/** @param {string} key @returns {Texts | undefined} */
export const recall = (key) => JSON.parse(stored("sessionStorage", slot(key)) || "null") ?? undefined;
