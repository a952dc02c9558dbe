"""Metal to add: flats, worn shanks, pits, gaps, prongs, plugs, and what a post carries."""
