package org.frisket.prepare.internal;

import java.util.List;
import java.util.OptionalDouble;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Transform;
import org.frisket.prepare.Finding;
import org.frisket.prepare.Severity;
import org.frisket.prepare.Uncleaned;

/**
 * What one step makes of an element, in the element's own frame.
 *
 * @param region that is worked along its edge
 * @param lines  that are worked besides
 * @param body   that mats follow
 * @param xHeight height of the smallest letters in mm, of a wording
 */
public record Shape(Region region, List<Contour> lines, Region body, Uncleaned uncleaned, List<Remark> remarks,
		OptionalDouble xHeight) {

	public static final Shape EMPTY = new Shape(Region.EMPTY, List.of(), Uncleaned.NOTHING, List.of());

	/** Of an element whose region is its body. */
	public Shape(Region region, List<Contour> lines, Uncleaned uncleaned, List<Remark> remarks) {
		this(region, lines, region, uncleaned, remarks, OptionalDouble.empty());
	}

	/** The same, of a wording whose smallest letters are so high. */
	public Shape withXHeight(OptionalDouble height) {
		return new Shape(region, lines, body, uncleaned, remarks, height);
	}

	/** Nothing but lines, which have no edge that a blade could follow. */
	public static Shape drawn(Region body, List<Contour> lines, Uncleaned uncleaned, List<Remark> remarks) {
		return new Shape(Region.EMPTY, lines, body, uncleaned, remarks, OptionalDouble.empty());
	}

	/** A finding that does not know its element yet; the place is in the element's own frame. */
	public record Remark(String id, Severity severity, Point place, String message, String cure) {

		Finding at(String element, Transform transform) {
			return Finding.plain(id, severity, element, transform.apply(place), message, cure);
		}
	}

	public static Shape nothing(List<Remark> why) {
		return new Shape(Region.EMPTY, List.of(), Uncleaned.NOTHING, why);
	}

	public static Shape nothing(Remark why) {
		return nothing(List.of(why));
	}
}
