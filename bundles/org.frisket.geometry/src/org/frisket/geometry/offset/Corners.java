package org.frisket.geometry.offset;

/** What becomes of a corner that an offset pulls open. Smooth curves are the same with all three. */
public sealed interface Corners {

	/** An arc about the corner. */
	Corners ROUND = new Round();

	/** Sharp up to the usual limit of 4, which is reached at 28.955 degrees. */
	Corners MITRE = new Mitre(4);

	/** Cut straight across. */
	Corners BEVEL = new Bevel();

	record Round() implements Corners {
	}

	/**
	 * The two sides go on until they meet, as long as the corner then lies no farther out than {@code limit} times the
	 * distance; sharper corners are bevelled. This is the meaning of {@code stroke-miterlimit} in SVG: a corner of angle
	 * a has the ratio 1 / sin(a / 2).
	 */
	record Mitre(double limit) implements Corners {

		/** @throws IllegalArgumentException if the limit is below 1 */
		public Mitre {
			if (!(limit >= 1)) {
				throw new IllegalArgumentException("mitre limit must be at least 1, got " + limit);
			}
		}
	}

	record Bevel() implements Corners {
	}
}
