package org.frisket.prepare.wording;

import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;

/**
 * What holds the letters of a wording together and the insides of letters in their stencil, in the wording's own frame
 * in mm.
 *
 * @param letters those that have an inside
 * @param spans   bridges between letters, in the order of the wording's bridges; those that cannot be are left out
 * @param islands insides of letters; none unless the wording is a stencil
 */
public record Bridgework(List<LetterAt> letters, List<Span> spans, List<IslandAt> islands) {

	public static final Bridgework NOTHING = new Bridgework(List.of(), List.of(), List.of());

	public Bridgework {
		letters = List.copyOf(letters);
		spans = List.copyOf(spans);
		islands = List.copyOf(islands);
	}

	/**
	 * @param index of its first character in the text
	 * @param end   index after its last one
	 * @param frame from the letter's own frame, in cap heights from its pen, to the wording's
	 */
	public record LetterAt(int index, int end, Outline outline, Transform frame) {
	}

	/**
	 * A bridge between letters.
	 *
	 * @param number of the bridge in the wording
	 * @param from   on the edge of the one letter
	 * @param to     on the edge of the other
	 * @param width  in mm
	 */
	public record Span(int number, Point from, Point to, double width) {

		public Point middle() {
			return from.towards(to, 0.5);
		}
	}

	/**
	 * The inside of a letter.
	 *
	 * @param index   of the first character of the letter; -1 if it belongs to none
	 * @param number  among the islands of the letter
	 * @param turn    of the letter in radians
	 * @param bridges that hold it
	 * @param loose   whether it falls out
	 */
	public record IslandAt(int index, int number, double turn, Contour edge, Point middle, List<Stub> bridges,
			boolean loose) {

		public IslandAt {
			bridges = List.copyOf(bridges);
		}

		/** Under which angle a place is seen from its middle: degrees clockwise from the letter's baseline, 0 to 360. */
		public double angle(Point place) {
			Point away = place.minus(middle);
			double degrees = Math.toDegrees(Math.atan2(away.y(), away.x()) - turn) % 360;
			return degrees < 0 ? degrees + 360 : degrees;
		}
	}

	/**
	 * A bridge of an island.
	 *
	 * @param inner where it leaves the island
	 * @param outer where it reaches the other side
	 */
	public record Stub(Point inner, Point outer, double width) {

		public Point middle() {
			return inner.towards(outer, 0.5);
		}
	}
}
