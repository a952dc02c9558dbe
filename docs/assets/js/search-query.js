// From the words of the bench to pages. The page's search and its tests both ask this; it touches neither page nor net.

/** @typedef {[anchor: string, heading: string, text: string]} Section */
/** @typedef {[path: string, title: string, description: string, weight: number, sections: Section[]]} PageText */
/** @typedef {{pages: PageText[], same: string[][], leads: [string[], string[]][]}} Data as search_index.py writes it */
/** @typedef {{path: string, title: string, heading: string, line: {text: string, found: boolean}[]}} Find */

// Words that say nothing about what is wanted. Short ones that do (up, down, off, out, in) are not among them.
const EMPTY = new Set(
  `a about after all am an and any are as at be been but by can could did do does for from get got had has have he her
  his how i if instead is it its just keep keeps many me much my of on or our she should so some than that the their them then there
  these they thing this to too was we were what when where which why will with would you your`.split(/\s+/),
);
const BOOST = { title: 6, about: 3, heading: 3, text: 1 };
const SYNONYM = 0.7; // a word found for another counts a little less
const CLOSER = 1.3; // a part of a page is the target when it fits this much better than the page's top
const LONGEST_PHRASE = 5;
const PARTS = /\d+[.,]\d+|[\p{L}\p{N}]+/gu;

/** @param {string} text */
const split = (text) =>
  text
    .normalize("NFKD")
    .replace(/[\p{M}'’]/gu, "")
    .toLowerCase()
    .match(PARTS) ?? [];
/** @type {Map<string, string>} */
const known = new Map();
/** As a word is indexed; an empty one is not. @param {string} word */
function toKey(word) {
  const key = known.get(word) ?? (EMPTY.has(word) ? "" : stem(word));
  known.set(word, key);
  return key;
}
/** @param {string} text */
const keys = (text) => split(text).map(toKey).filter(Boolean);

/** A word without its ending, so that cracks, cracked and cracking are one. @param {string} word */
function stem(word) {
  if (/\d/.test(word)) return word.replace(",", ".");
  let kept = word.replace(/(?<=..)ies$/, "y").replace(/(?<=s|x|ch|sh)es$|(?<=..[^su])s$/, "");
  const cut = kept.replace(/(ing|ed)$/, "");
  const isEnding = cut.length > 2 && /[aeiouy]/.test(cut) && !/(ear|st|sp)ring$/.test(kept);
  if (cut !== kept && isEnding) kept = cut.replace(/([^aeiouylsz])\1$/, "$1");
  return kept.replace(/(?<=...)e$/, "");
}

/** @param {any} MiniSearch the engine's class @param {Data} data */
export async function makeSearch(MiniSearch, data) {
  const engine = new MiniSearch({
    fields: Object.keys(BOOST),
    tokenize: split,
    processTerm: toKey,
    searchOptions: { boost: BOOST, combineWith: "AND" },
  });
  const records = data.pages.flatMap(([, title, about, , sections], page) =>
    sections.map(([anchor, heading, text]) => ({ id: 0, page, title, about, anchor, heading, text })),
  );
  for (const [id, record] of records.entries()) record.id = id;
  await engine.addAllAsync(records, { chunkSize: 30 }); // in small bites: the person is typing

  /** @type {Record<string, Set<string>>} */
  const others = {};
  for (const [from, to] of [...data.leads, ...data.same.map((words) => [words, words])]) {
    for (const key of from.map((words) => keys(words).join(" "))) {
      others[key] ??= new Set();
      for (const words of to) if (keys(words).join(" ") !== key) others[key].add(words);
    }
  }

  /** One word or phrase of the question in all its ways. @param {string[]} words @param {boolean} last */
  function look(words, last) {
    // A phrase counts for each of its words; the engine adds the words of a way up, twice over.
    const ways = [...(others[keys(words.join(" ")).join(" ")] ?? [])].map((way) => ({
      finds: engine.search(way),
      scale: (SYNONYM * words.length) / Math.max(1, keys(way).length) ** 2,
    }));
    const [word, ...more] = words;
    if (!more.length) {
      // The person's own word may be unfinished or misspelt; those of our list are neither.
      const exact = engine.search(word, { prefix: last && word.length > 1 });
      const close = exact.length || word.length < 4 ? exact : engine.search(word, { prefix: true, fuzzy: 0.25 });
      ways.unshift({ finds: close, scale: 1 });
    }
    // A word that stands on every page tells little.
    const first = ways.find((way) => way.finds.length)?.finds ?? [];
    const pages = new Set(first.map((/** @type {{id: number}} */ { id }) => records[id].page)).size;
    const rare = pages && Math.log(1 + data.pages.length / pages);
    /** @type {Record<number, {id: number, score: number, terms: string[]}>} */
    const best = {};
    for (const { finds, scale } of ways) {
      for (const { id, score, terms } of finds) {
        best[id] ??= { id, score: 0, terms: [] };
        best[id].score = Math.max(best[id].score, score * scale * rare);
        best[id].terms.push(...terms);
      }
    }
    return { best, rare };
  }

  /** The pages that fit best, each once, at the part that fits best. @param {string} asked @param {number} most @returns {Find[]} */
  return (asked, most) => {
    const words = split(asked).filter(toKey);
    const worth = words.map(() => 0);
    const pages = data.pages.map(() => ({
      told: words.map(() => 0), // which words of the question the page has
      score: 0,
      /** @type {ReturnType<typeof look>["best"]} */
      sections: {},
    }));
    for (let from = 0; from < words.length; from++) {
      for (let to = from + 1; to <= Math.min(words.length, from + LONGEST_PHRASE); to++) {
        const { best, rare } = look(words.slice(from, to), to === words.length);
        for (let at = from; at < to; at++) worth[at] = Math.max(worth[at], rare);
        const onPage = pages.map(() => 0);
        for (const { id, score, terms } of Object.values(best)) {
          const { page } = records[id];
          const { told, sections } = pages[page];
          told.fill(1, from, to);
          pages[page].score += Math.max(0, score - onPage[page]); // a page has a word once
          onPage[page] = Math.max(onPage[page], score);
          sections[id] ??= { id, score: 0, terms: [] };
          sections[id].score += score;
          sections[id].terms.push(...terms);
        }
      }
    }
    const sum = (/** @type {number[]} */ numbers) => numbers.reduce((all, one) => all + one, 0);
    return data.pages
      .map(([path, title, about, weight], at) => {
        const { told, score, sections } = pages[at];
        let target = { id: -1, score: 0, terms: [""] };
        for (const one of Object.values(sections)) {
          if (one.score > target.score * (records[target.id]?.anchor === "" ? CLOSER : 1)) target = one;
        }
        const { anchor, heading, text } = records[target.id] ?? {};
        const share = sum(worth.map((one, word) => one * told[word])) / sum(worth);
        return {
          path: anchor ? `${path}#${anchor}` : path,
          title,
          heading,
          score: (score + target.score) * weight * share,
          line: () => bestLine(anchor ? `${text}\n${about}` : `${about}\n${text}`, new Set(target.terms)),
        };
      })
      .filter(({ score }) => score > 0)
      .sort((one, other) => other.score - one.score)
      .slice(0, most)
      .map(({ line, ...found }) => ({ ...found, line: line() }));
  };
}

/** The sentence that holds most of the words found, the first of equals. @param {string} text @param {Set<string>} terms */
function bestLine(text, terms) {
  const count = (/** @type {string} */ line) => new Set(keys(line).filter((key) => terms.has(key))).size;
  const line = text.split(/\n|(?<=[.?!]) /).reduce((best, one) => (count(one) > count(best) ? one : best));
  const pieces = line.split(/([\p{L}\p{N}'’]+)/u);
  return pieces.map((text) => ({ text, found: keys(text).some((key) => terms.has(key)) }));
}
