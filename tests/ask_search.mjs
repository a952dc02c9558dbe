// Answers questions with the search of the built pages: its index, its engine, its own query module.
// node ask_search.mjs SITE < JSON list of questions > JSON list of lists of paths

import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { pathToFileURL } from "node:url";

const site = resolve(process.argv[2]);
const part = (/** @type {string} */ name) => import(pathToFileURL(`${site}/${name}`).href);
const { makeSearch } = await part("assets/js/search-query.js");
const { default: MiniSearch } = await part("vendor/minisearch/minisearch.js");
const search = await makeSearch(MiniSearch, JSON.parse(readFileSync(`${site}/assets/search-index.json`, "utf8")));
const questions = JSON.parse(readFileSync(0, "utf8"));
process.stdout.write(JSON.stringify(questions.map((/** @type {string} */ asked) => search(asked, 10))));
