package org.frisket.typography.internal.join;

import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.typography.internal.join.Profile.Stretch;

/**
 * How far a letter must move towards the letter on its left until the two overlap.
 * <p>
 * In a row that both fill, take a filled stretch of the left letter and one of the right letter that does not lie
 * wholly to the left of it; the <em>depth</em> of the two is how far the right end of the first lies beyond the left
 * end of the second, negative where there is a gap. The depth of two letters is the largest over all rows and
 * stretches, save those where both stretches are thinner than the wanted overlap, for these would pass through each
 * other before they hold.
 */
public final class Approach {

	/** Below this share of the wanted overlap, a joint is not tried any more. */
	private static final int HALVINGS = 6;
	private static final double ROUNDING = 1e-6;
	/** Share of its height over which the lower of two letters must face the other. */
	private static final double LEAST_FACING = 0.1;

	/** No movement along the line makes the two overlap. */
	public static final double NEVER = Double.NEGATIVE_INFINITY;

	private Approach() {
	}

	/**
	 * The movement of {@code b}, 0 or to the left (negative), after which the bodies overlap by {@code touch}; 0 if
	 * they overlap as much or more already. Where strokes are too thin for that, they overlap by as much as they can
	 * hold.
	 *
	 * @param offset by which {@code b} is moved already, compared with {@code a}
	 * @return {@link #NEVER} if they share too few rows for a joint that holds: less than {@code touch}, or less than
	 *         a tenth of the lower letter's height
	 */
	public static double movement(LetterShape a, LetterShape b, double offset, double touch) {
		Bounds left = a.body().bounds();
		Bounds right = b.body().bounds();
		double top = Math.max(left.minY(), right.minY());
		double bottom = Math.min(left.maxY(), right.maxY());
		if (bottom - top < Math.max(touch, LEAST_FACING * Math.min(left.height(), right.height()))) {
			return overlap(a.body(), b.body(), offset) ? 0 : NEVER;
		}
		Contact contact = Contact.of(a.body(), b.body(), offset);
		double wanted = touch;
		for (int i = 0; i < HALVINGS; i++, wanted /= 2) {
			double depth = depth(a.body(), b.body(), offset, wanted, contact, top, bottom);
			if (depth != NEVER) {
				return Math.min(0, depth - wanted);
			}
		}
		return NEVER;
	}

	/** An upper bound of {@link #movement}, for the asking. */
	static double mostMovement(LetterShape a, LetterShape b, double offset, double touch) {
		return Math.min(0, -gap(a, b, offset) - touch);
	}

	/** From the right edge of {@code a} to the left edge of {@code b}, whatever their heights. */
	static double gap(LetterShape a, LetterShape b, double offset) {
		return b.body().bounds().minX() + offset - a.body().bounds().maxX();
	}

	/** Outermost places only, which is exact and quick as long as the letters do not reach into each other. */
	private record Contact(double depth, double row) {

		static Contact of(Profile a, Profile b, double offset) {
			double deepest = NEVER;
			double row = 0;
			for (int i = 0; i < a.size(); i++) {
				double x = a.cornerX(i) - offset;
				if (x - b.bounds().minX() > deepest) {
					double depth = x - b.left(a.cornerY(i));
					if (depth > deepest) {
						deepest = depth;
						row = a.cornerY(i);
					}
				}
			}
			for (int i = 0; i < b.size(); i++) {
				double x = b.cornerX(i) + offset;
				if (a.bounds().maxX() - x > deepest) {
					double depth = a.right(b.cornerY(i)) - x;
					if (depth > deepest) {
						deepest = depth;
						row = b.cornerY(i);
					}
				}
			}
			return new Contact(deepest, row);
		}
	}

	private static double depth(Profile a, Profile b, double offset, double touch, Contact contact, double top,
			double bottom) {
		double above = b.rowAbove(contact.row(), a.rowAbove(contact.row(), top));
		double below = b.rowBelow(contact.row(), a.rowBelow(contact.row(), bottom));
		double depth = Math.max(depth(a, b, offset, touch, above, contact.row()),
				depth(a, b, offset, touch, contact.row(), below));
		double enough = Math.min(touch, contact.depth()) - ROUNDING * touch;
		if (depth < enough) {
			double[] rows = Profile.rows(a, b, top, bottom);
			for (int i = 1; i < rows.length && depth < enough; i++) {
				depth = Math.max(depth, depth(a, b, offset, touch, rows[i - 1], rows[i]));
			}
		}
		return depth;
	}

	/** The depth in one band of rows, where every edge is straight: it is largest at the first or the last row. */
	private static double depth(Profile a, Profile b, double offset, double touch, double top, double bottom) {
		double depth = NEVER;
		if (top >= bottom) {
			return depth;
		}
		List<Stretch> right = b.stretches(top, bottom);
		for (Stretch first : right.isEmpty() ? right : a.stretches(top, bottom)) {
			for (Stretch second : right) {
				depth = Math.max(depth, depth(a, first, b, second, offset, touch, top));
				depth = Math.max(depth, depth(a, first, b, second, offset, touch, bottom));
			}
		}
		return depth;
	}

	private static double depth(Profile a, Stretch first, Profile b, Stretch second, double offset,
			double touch, double row) {
		double firstLeft = a.x(first.left(), row);
		double firstRight = a.x(first.right(), row);
		double secondLeft = b.x(second.left(), row) + offset;
		double secondRight = b.x(second.right(), row) + offset;
		boolean behind = secondRight <= firstLeft;
		boolean thin = Math.max(firstRight - firstLeft, secondRight - secondLeft) <= touch;
		return behind || thin ? NEVER : firstRight - secondLeft;
	}

	/** Whether the two have a common row stretch of some width, {@code b} moved by {@code offset}. */
	static boolean overlap(Profile a, Profile b, double offset) {
		Bounds left = a.bounds();
		Bounds right = b.bounds();
		double top = Math.max(left.minY(), right.minY());
		double bottom = Math.min(left.maxY(), right.maxY());
		if (top >= bottom || left.maxX() <= right.minX() + offset || right.maxX() + offset <= left.minX()) {
			return false;
		}
		double[] rows = Profile.rows(a, b, top, bottom);
		for (int i = 1; i < rows.length; i++) {
			double middle = (rows[i - 1] + rows[i]) / 2;
			for (Stretch first : a.stretches(rows[i - 1], rows[i])) {
				for (Stretch second : b.stretches(rows[i - 1], rows[i])) {
					if (Math.min(a.x(first.right(), middle), b.x(second.right(), middle) + offset) > Math
							.max(a.x(first.left(), middle), b.x(second.left(), middle) + offset)) {
						return true;
					}
				}
			}
		}
		return false;
	}
}
