// The pages for learning: questions marked as known or not yet, and the button that prints a form.
// Marks are kept on this device only, by page and by the question's text.

import { button, store, stored } from "./small-parts.js";

/** `of`: how many questions the page asks. @typedef {{of: number, marks: Record<string, boolean>}} Score */

/** @param {string} path */
const slot = (path) => `known ${path}`;
/** @param {string} path @returns {Score | null} */
const read = (path) => JSON.parse(stored("localStorage", slot(path)) || "null");
/** @param {Score} score */
const words = ({ of, marks }) => `${Object.values(marks).filter(Boolean).length} of ${of} known on this device`;
/** @param {string} name */
const paragraph = (name) => Object.assign(document.createElement("p"), { className: name });

/** Buttons after each answer, the score above the first question. @param {HTMLDetailsElement[]} questions */
function keepScore(questions) {
  const parts = questions.map((box) => {
    const asked = /** @type {HTMLElement} */ (box.querySelector("summary"));
    const [text, state, row] = [asked.textContent ?? "", document.createElement("small"), paragraph("self-marks")];
    row.append(
      button("I knew it", () => mark(text, true)),
      button("Not yet", () => mark(text, false)),
    );
    box.append(row);
    asked.append(state);
    return { text, state, row };
  });
  // Marks of questions that an edition has dropped fall away.
  const kept = Object.entries(read(location.pathname)?.marks ?? {});
  let marks = Object.fromEntries(kept.filter(([text]) => parts.some((part) => part.text === text)));
  const told = paragraph("self-score");
  told.setAttribute("role", "status");
  const clear = button("Clear these marks", () => {
    marks = {};
    show();
    questions[0].querySelector("summary")?.focus(); // the button goes away
  });
  questions[0].before(told, clear);

  /** The same button again takes the mark back. @param {string} text @param {boolean} knew */
  function mark(text, knew) {
    if (marks[text] === knew) delete marks[text];
    else marks[text] = knew;
    show();
  }

  function show() {
    const score = { of: parts.length, marks };
    const some = Object.keys(marks).length > 0;
    store("localStorage", slot(location.pathname), some ? JSON.stringify(score) : "");
    told.textContent = words(score);
    clear.hidden = !some;
    for (const { text, state, row } of parts) {
      state.textContent = text in marks ? (marks[text] ? "known" : "not yet") : "";
      row.children[0].setAttribute("aria-pressed", String(marks[text] === true));
      row.children[1].setAttribute("aria-pressed", String(marks[text] === false));
    }
  }
  show();
}

/** The list of the sittings, each with its score, where it has one. @param {HTMLElement} list */
function showSittings(list) {
  const links = /** @type {NodeListOf<HTMLAnchorElement>} */ (list.querySelectorAll("a[href]"));
  const told = [...links].map((link) => ({ path: link.pathname, score: paragraph("self-score") }));
  for (const [index, link] of links.entries()) link.after(told[index].score);
  const clear = button("Clear the marks of all sittings", () => {
    for (const { path } of told) store("localStorage", slot(path), "");
    show();
    links[0].focus();
  });
  list.after(clear);

  function show() {
    const scores = told.map(({ path }) => read(path));
    told.forEach(({ score }, index) => {
      const known = scores[index];
      score.textContent = known ? words(known) : "";
    });
    clear.hidden = !scores.some(Boolean);
  }
  addEventListener("pageshow", show); // also when the page comes back out of the browser's memory
}

const asked = /** @type {HTMLDetailsElement[]} */ ([...document.querySelectorAll("details.self-check")]);
if (asked.length) keepScore(asked);
const sittings = /** @type {HTMLElement | null} */ (document.querySelector(".sittings"));
if (sittings) showSittings(sittings);
document.querySelector("[data-print-page]")?.addEventListener("click", () => window.print());
