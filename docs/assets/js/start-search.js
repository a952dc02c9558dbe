// The start page's search field hands what was typed to the search that every page has in its head.

/** @type {HTMLFormElement | null} */
const form = document.querySelector("form.start-search");
/** @type {HTMLInputElement | null} */
const query = document.querySelector("[data-md-component=search-query]");

form?.addEventListener("submit", (event) => {
  if (!query) return;
  event.preventDefault();
  const open = /** @type {HTMLInputElement | null} */ (document.getElementById("__search"));
  if (open && !open.checked) open.click();
  query.value = String(new FormData(form).get("q") ?? "");
  query.focus(); // the search reads the field when it gets the focus
  query.dispatchEvent(new KeyboardEvent("keyup"));
});
