"""The language of the pages: spelling, grade, sentences, sections, units, sources, links, words we don't use."""
