package org.frisket.typography.chart;

import java.util.List;

/** Which of a face's glyphs are shown. */
public enum GlyphFilter {

	ALL {
		@Override
		public boolean has(GlyphEntry entry) {
			return true;
		}
	},
	/** Those that a character stands for. */
	CHARACTERS {
		@Override
		public boolean has(GlyphEntry entry) {
			return !entry.characters().isEmpty();
		}
	},
	/** Alternates, ligatures and ornaments that no character stands for. */
	LONE {
		@Override
		public boolean has(GlyphEntry entry) {
			return entry.characters().isEmpty();
		}
	},
	/** Ornaments and symbols, with a character or without. */
	ORNAMENTS {
		@Override
		public boolean has(GlyphEntry entry) {
			return entry.kind() == GlyphKind.ORNAMENT || entry.kind() == GlyphKind.SYMBOL;
		}
	};

	public abstract boolean has(GlyphEntry entry);

	/** In the same order. */
	public List<GlyphEntry> of(List<GlyphEntry> entries) {
		return this == ALL ? entries : entries.stream().filter(this::has).toList();
	}
}
