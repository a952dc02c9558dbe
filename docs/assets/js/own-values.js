// The shop's own values: what an answer offers to keep stays on this device and adds lines to the settings tables.

import { ask } from "./python-runtime.js";
import { button, store, stored } from "./small-parts.js";

/** As calculators.declare.Keepsake writes it. @typedef {{label: string, date?: string, when: Record<string, string>, values: Record<string, string>}} Kept */

const SLOT = "own values";
const kept = () => /** @type {Kept[]} */ (JSON.parse(stored("localStorage", SLOT) || "[]"));
const same = (/** @type {Kept} */ one, /** @type {Kept} */ other) =>
  JSON.stringify([one.when, Object.keys(one.values)]) === JSON.stringify([other.when, Object.keys(other.values)]);

/** @param {Kept[]} all */
function save(all) {
  store("localStorage", SLOT, all.length ? JSON.stringify(all) : "");
  showAll();
}

document.addEventListener("click", (event) => {
  const pressed = /** @type {HTMLElement | null} */ (/** @type {Element} */ (event.target).closest("[data-keep]"));
  if (!pressed) return;
  /** @type {Kept} */
  const one = { ...JSON.parse(pressed.dataset.keep ?? ""), date: new Date().toLocaleDateString("en-CA") };
  save([...kept().filter((other) => !same(one, other)), one]);
  pressed.textContent = kept().length ? "Kept on this device" : "This browser keeps nothing";
});

/** Everything kept that speaks of these fields, the later over the earlier. @param {Record<string, string>} fields */
function valuesFor(fields) {
  const fitting = kept().filter(({ when }) => Object.entries(when).every(([name, text]) => fields[name] === text));
  return fitting.length ? Object.assign({}, ...fitting.map((one) => one.values)) : undefined;
}

/** The list above a table, each with a button to forget it. @param {HTMLElement} box */
function list(box) {
  const ours = kept().filter(({ when }) => when.source === box.dataset.ownValues);
  box.replaceChildren(
    ...ours.map((one) => {
      const line = document.createElement("p");
      line.append(`Kept here on ${one.date}: ${one.label} `);
      line.append(button("Forget", () => save(kept().filter((other) => !same(one, other)))));
      return line;
    }),
  );
  box.hidden = !ours.length;
}

/** A line with the shop's own values under each line of the model. @param {HTMLTableElement} table */
async function fill(table) {
  for (const old of table.querySelectorAll("tr.own")) old.remove();
  const head = (/** @type {Element} */ row) => row.parentElement?.querySelector("[scope=rowgroup]");
  for (const cell of /** @type {NodeListOf<HTMLTableCellElement>} */ (table.querySelectorAll("[scope=rowgroup]"))) {
    cell.rowSpan = cell.closest("tbody")?.rows.length ?? 1;
  }
  for (const row of /** @type {NodeListOf<HTMLElement>} */ (table.querySelectorAll("tr[data-fields]"))) {
    const fields = JSON.parse(row.dataset.fields ?? "{}");
    const own = valuesFor(fields);
    if (!own) continue;
    const key = `own ${row.dataset.fields}`;
    const answer = await ask(key, table.dataset.ownCalculator ?? "", { ...fields, ...own }).catch(() => undefined);
    if (!answer || JSON.stringify(own) !== JSON.stringify(valuesFor(fields))) continue; // forgotten meanwhile
    const copy = /** @type {HTMLElement} */ (row.cloneNode(true));
    copy.querySelector("[scope=rowgroup]")?.remove();
    copy.removeAttribute("data-fields");
    copy.className = "own";
    const [first] = copy.querySelectorAll("[scope=row]");
    first.textContent = "your values";
    for (const part of /** @type {NodeListOf<HTMLElement>} */ (copy.querySelectorAll("[data-result]"))) {
      const result = answer.results?.[part.dataset.result ?? ""];
      part.textContent = (part.dataset.part === "range" && result?.range) || result?.text || "–";
    }
    if (answer.errors) first.nextElementSibling?.replaceChildren("not with these values");
    row.after(copy);
    const group = /** @type {HTMLTableCellElement | undefined} */ (head(row));
    if (group) group.rowSpan += 1;
  }
}

let round = Promise.resolve();
function showAll() {
  for (const box of /** @type {NodeListOf<HTMLElement>} */ (document.querySelectorAll("[data-own-values]"))) list(box);
  const tables = [.../** @type {NodeListOf<HTMLTableElement>} */ (document.querySelectorAll("[data-own-calculator]"))];
  round = tables.reduce((before, table) => before.then(() => fill(table)), round);
}

showAll();
window.addEventListener("storage", showAll); // kept or forgotten in another tab
