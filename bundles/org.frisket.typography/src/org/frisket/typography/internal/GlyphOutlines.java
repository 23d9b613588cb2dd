package org.frisket.typography.internal;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.IntFunction;

import org.frisket.geometry.Outline;
import org.frisket.geometry.Transform;

/**
 * The outlines of a face's glyphs that were asked for last, in font units and in the sizes they are set in. Equal letters
 * of a text are moved copies of one outline, so that what is found out about a letter holds for all. Safe for use by
 * several threads.
 */
public final class GlyphOutlines {

	/** Of each kind; a page of mixed script stays well below. */
	private static final int MOST = 2_048;

	private final IntFunction<Outline> source;
	private final Map<Integer, Outline> unscaled = new Kept<>();
	private final Map<Sized, Outline> scaled = new Kept<>();

	private record Sized(int glyph, double scale) {
	}

	private static final class Kept<K> extends LinkedHashMap<K, Outline> {

		private static final long serialVersionUID = 1L;

		Kept() {
			super(16, 0.75f, true);
		}

		@Override
		protected boolean removeEldestEntry(Map.Entry<K, Outline> eldest) {
			return size() > MOST;
		}
	}

	/** @param source makes a glyph's outline in font units */
	public GlyphOutlines(IntFunction<Outline> source) {
		this.source = source;
	}

	/** In font units. */
	public Outline of(int glyph) {
		synchronized (unscaled) {
			return unscaled.computeIfAbsent(glyph, source::apply);
		}
	}

	/** @param scale mm for a font unit */
	public Outline of(int glyph, double scale) {
		synchronized (scaled) {
			return scaled.computeIfAbsent(new Sized(glyph, scale),
					key -> of(glyph).transformed(Transform.scaling(scale, scale)));
		}
	}
}
