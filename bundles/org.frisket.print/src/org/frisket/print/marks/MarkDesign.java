package org.frisket.print.marks;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Contour;
import org.frisket.geometry.OutlineBuilder;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Transform;
import org.frisket.model.MarkKind;

/**
 * How a register mark is drawn.
 *
 * @param kind   of it
 * @param size   of the square that it fills, mm
 * @param weight of its strokes, mm; a disc has none, a pennant's pole has it
 * @param quiet  how much bare paper is to be around it, mm
 */
public record MarkDesign(MarkKind kind, double size, double weight, double quiet) {

	/** A common size for marks that a scanner finds; common practice, no source. */
	public static final MarkDesign USUAL = new MarkDesign(MarkKind.DISC, 5, 1, 3);

	private static final double LARGEST = 50;
	private static final double ROUND = 1e-4;

	/** @throws IllegalArgumentException with a sentence, if the strokes do not fit in the size */
	public MarkDesign {
		if (!(size > 0 && size <= LARGEST) || !(weight > 0 && weight <= size / 2) || !(quiet >= 0 && quiet <= LARGEST)) {
			throw new IllegalArgumentException(NLS.bind(Messages.MarkDesign_size, (int) LARGEST));
		}
	}

	public MarkDesign as(MarkKind other) {
		return new MarkDesign(other, size, weight, quiet);
	}

	/** The mark at the origin. */
	Region shape() {
		double half = size / 2;
		double stroke = weight / 2;
		return switch (kind) {
		case CORNER -> polygon(-stroke, -stroke, size - stroke, -stroke, size - stroke, stroke, stroke, stroke, stroke,
				size - stroke, -stroke, size - stroke);
		case CROSS -> polygon(-stroke, -half, stroke, -half, stroke, -stroke, half, -stroke, half, stroke, stroke, stroke,
				stroke, half, -stroke, half, -stroke, stroke, -half, stroke, -half, -stroke, -stroke, -stroke);
		case DISC -> disc(half);
		case PENNANT -> polygon(-half, -half, half, -size / 4, weight - half, size / 8, weight - half, half, -half, half);
		};
	}

	private static Region polygon(double... coordinates) {
		List<Point> corners = new ArrayList<>();
		for (int i = 0; i < coordinates.length; i += 2) {
			corners.add(new Point(coordinates[i], coordinates[i + 1]));
		}
		Collections.reverse(corners);
		return new Region(List.of(new Piece(Contour.polygon(corners), List.of())));
	}

	private static Region disc(double radius) {
		OutlineBuilder builder = new OutlineBuilder(ROUND);
		builder.startArc(Point.ORIGIN, radius, radius, 0, 0, -2 * Math.PI);
		builder.close();
		return new Region(List.of(new Piece(builder.build().contours().get(0), List.of())));
	}

	/** The mark at a place. @param turn in radians from the x axis towards the y axis */
	public Region shape(Point place, double turn) {
		return shape().transformed(Transform.rotation(turn).then(Transform.translation(place.x(), place.y())));
	}
}
