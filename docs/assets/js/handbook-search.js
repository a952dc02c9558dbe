// Search while you type: in the start page's field, and in the sheet that the button in every page's head opens.
// What was asked stands in the address after #, so that Back brings the finds again.

import { makeSearch } from "./search-query.js";
import { piece } from "./small-parts.js";

const ROOT = new URL("../../", import.meta.url);
const WAYS_IN = { jobs: "By job", joints: "By joint", faults: "By what went wrong", numbers: "By number" };
const NOTHING = "No page has these words. Try one plain word for the part or the fault, or look:";
const NOT_LOADED = "The search could not be loaded. These ways in lead to every page:";
const AFTER_TYPING = 120; // ms
const BEFORE_SPEAKING = 500; // ms, so that a screen reader does not start anew with every letter

// The start page has the field itself; on every other page it is in the sheet.
const sheet = /** @type {HTMLDialogElement} */ (document.querySelector("dialog.search-sheet"));
const onPage = document.querySelector("form.start-search");
const form = /** @type {HTMLFormElement} */ (onPage ?? sheet.querySelector("form.search-form"));
const field = /** @type {HTMLInputElement} */ (form.elements.namedItem("q"));
const status = piece("p", "", "search-status");
const finds = piece("ul", "", "page-list search-finds");
status.setAttribute("role", "status");
form.after(status, finds);

async function load() {
  const [engine, data] = await Promise.all([
    import(new URL("vendor/minisearch/minisearch.js", ROOT).href),
    fetch(new URL("assets/search-index.json", ROOT)).then((answer) => answer.json()),
  ]);
  return makeSearch(engine.default, data);
}
/** @type {ReturnType<typeof load> | undefined} */
let loading;
function ready() {
  loading ??= load();
  return loading.catch(() => (loading = undefined)); // the next letter tries again
}

const inAddress = () => new URLSearchParams(location.hash.slice(1)).get("q") ?? "";
let before = ""; // what the address held after # until the question took its place
/** @param {string} asked */
function keepInAddress(asked) {
  if (asked === inAddress()) return;
  if (!inAddress()) before = location.hash;
  const hash = asked ? `#${new URLSearchParams({ q: asked })}` : before;
  history.replaceState(history.state, "", hash || location.pathname + location.search);
}

/** @param {string} path @param {string} text @param {(string | Node)[]} line */
function listed(path, text, line = []) {
  const item = piece("li");
  const link = piece("a", text);
  link.href = new URL(path, ROOT).href;
  const words = piece("p");
  words.append(...line);
  item.append(link, ...(line.length ? [words] : []));
  return item;
}

let typing = 0;
let pause = 0;
async function answer() {
  clearTimeout(typing);
  const asked = field.value.trim();
  keepInAddress(asked);
  const search = asked && (await ready());
  if (asked !== field.value.trim()) return; // typed on while the search was loading
  const found = search ? search(asked, 8) : [];
  let items = found.map(({ path, title, heading, line }) =>
    listed(
      path,
      heading ? `${title}: ${heading}` : title,
      line.map((one) => (one.found ? piece("mark", one.text) : one.text)),
    ),
  );
  let sentence = items.length === 1 ? "1 page. Enter opens it." : `${items.length} pages. Enter opens the first.`;
  if (!items.length) {
    sentence = asked && (search ? NOTHING : NOT_LOADED);
    if (asked) items = Object.entries(WAYS_IN).map(([folder, text]) => listed(`${folder}/`, text));
  }
  const first = !finds.children.length;
  finds.replaceChildren(...items);
  if (first && items.length) onPage?.scrollIntoView(); // the finds stand below the field
  clearTimeout(pause);
  pause = window.setTimeout(() => status.replaceChildren(sentence), sentence ? BEFORE_SPEAKING : 0);
}

function open() {
  if (!onPage && !sheet.open) sheet.showModal();
  field.focus();
}
function readAddress() {
  field.value = inAddress();
  if (field.value) open();
  else sheet.close();
  answer();
}
form.addEventListener("focusin", ready, { once: true });
form.addEventListener("input", () => {
  clearTimeout(typing);
  typing = window.setTimeout(answer, AFTER_TYPING);
});
form.addEventListener("submit", async (event) => {
  event.preventDefault();
  await answer();
  finds.querySelector("a")?.click();
});
document.querySelector("[data-search-open]")?.addEventListener("click", open);
sheet.addEventListener("close", () => {
  field.value = "";
  answer();
});
addEventListener("hashchange", readAddress);
if (inAddress()) readAddress();
