package org.frisket.imports.svg;

import java.awt.BasicStroke;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Outline;
import org.frisket.geometry.OutlineBuilder;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.imports.Remarks;

/** What a pen covers: SVG 1.1, section 11.4. It may overlap itself; its inside is where it does not wind to nothing. */
final class StrokeOutline {

	/** The library works to a fraction of a unit, so there have to be many in a mm. */
	private static final double UNITS_PER_MM = 100;
	/** And gaps, in one element; nobody draws more on a sheet, and a long line may have millions. */
	private static final int MOST_DASHES = 100_000;

	private StrokeOutline() {
	}

	/**
	 * @param width of the pen in pixels
	 * @param scope of the element
	 */
	static Outline of(Outline line, double width, Node node, Scope scope, Remarks remarks) {
		Style style = scope.style();
		Lengths lengths = scope.lengths();
		double k = scope.pixel() * UNITS_PER_MM;
		double limit = Numbers.parse(style.get("stroke-miterlimit", "4").strip());
		float[] dashes = dashes(style, lengths, k);
		if (dashes != null && count(line, dashes, k) > MOST_DASHES) {
			remarks.once(node.place(), NLS.bind(Messages.StrokeOutline_dashes, MOST_DASHES));
			dashes = null;
		}
		BasicStroke stroke = new BasicStroke((float) (width * k), cap(style), join(style),
				limit >= 1 ? (float) limit : 4, dashes, offset(style, lengths, k, dashes));
		return outline(stroke.createStrokedShape(path(line, k)).getPathIterator(null), 1 / k);
	}

	/**
	 * What a pen covers that is put down and lifted without a way between: a disc, or a square along the axes of the
	 * element's frame; a pen without caps covers nothing (SVG 1.1, section 11.4).
	 *
	 * @param width     of the pen in pixels
	 * @param deviation how far cubics may lie from the edge of the disc, in pixels
	 */
	static Outline ofDots(List<Point> dots, double width, Style style, double deviation) {
		OutlineBuilder pen = new OutlineBuilder(deviation);
		double half = width / 2;
		for (Point dot : dots) {
			if (cap(style) == BasicStroke.CAP_ROUND) {
				pen.startArc(dot, half, half, 0, 0, 2 * Math.PI);
				pen.close();
			} else if (cap(style) == BasicStroke.CAP_SQUARE) {
				pen.moveTo(dot.plus(new Point(-half, -half)));
				pen.lineTo(dot.plus(new Point(half, -half)));
				pen.lineTo(dot.plus(new Point(half, half)));
				pen.lineTo(dot.plus(new Point(-half, half)));
				pen.close();
			}
		}
		return pen.build();
	}

	/** Whether the pen leaves anything where it does not move. */
	static boolean hasCaps(Style style) {
		return cap(style) != BasicStroke.CAP_BUTT;
	}

	private static int cap(Style style) {
		return switch (style.get("stroke-linecap", "butt")) {
		case "round" -> BasicStroke.CAP_ROUND;
		case "square" -> BasicStroke.CAP_SQUARE;
		default -> BasicStroke.CAP_BUTT;
		};
	}

	private static int join(Style style) {
		return switch (style.get("stroke-linejoin", "miter")) {
		case "round" -> BasicStroke.JOIN_ROUND;
		case "bevel" -> BasicStroke.JOIN_BEVEL;
		default -> BasicStroke.JOIN_MITER;
		};
	}

	/** Null for an unbroken line; an odd list is taken twice. */
	private static float[] dashes(Style style, Lengths lengths, double k) {
		String[] words = style.get("stroke-dasharray", "none").strip().split("[\\s,]+");
		float[] dashes = new float[words.length];
		double sum = 0;
		for (int i = 0; i < words.length; i++) {
			double length = lengths.parse(words[i], Lengths.Of.DIAGONAL);
			if (!(length >= 0)) {
				return null;
			}
			dashes[i] = (float) (length * k);
			sum += length;
		}
		// below a hundredth of a mm no dash is told from a line, and there may be millions
		return sum * k < words.length ? null : dashes;
	}

	private static double count(Outline line, float[] dashes, double k) {
		double length = line.contours().stream().mapToDouble(Contour::length).sum();
		return length * k / sum(dashes) * dashes.length;
	}

	private static double sum(float[] dashes) {
		double sum = 0;
		for (float dash : dashes) {
			sum += dash;
		}
		return sum;
	}

	/** A negative one is as much of the pattern further on. */
	private static float offset(Style style, Lengths lengths, double k, float[] dashes) {
		double offset = k * lengths.parse(style.get("stroke-dashoffset", "0"), Lengths.Of.DIAGONAL);
		if (Double.isNaN(offset) || dashes == null) {
			return 0;
		}
		double pattern = sum(dashes) * (dashes.length % 2 == 0 ? 1 : 2);
		return (float) (offset - Math.floor(offset / pattern) * pattern);
	}

	private static Path2D path(Outline line, double k) {
		Path2D path = new Path2D.Double();
		for (Contour contour : line.contours()) {
			List<Segment> segments = contour.segments();
			path.moveTo(contour.start().x() * k, contour.start().y() * k);
			for (Segment segment : segments) {
				Point end = segment.end();
				if (segment instanceof Cubic c) {
					path.curveTo(c.control1().x() * k, c.control1().y() * k, c.control2().x() * k, c.control2().y() * k,
							end.x() * k, end.y() * k);
				} else {
					path.lineTo(end.x() * k, end.y() * k);
				}
			}
			if (contour.isClosed()) {
				path.closePath();
			}
		}
		return path;
	}

	private static Outline outline(PathIterator path, double k) {
		OutlineBuilder builder = new OutlineBuilder();
		double[] c = new double[6];
		for (; !path.isDone(); path.next()) {
			switch (path.currentSegment(c)) {
			case PathIterator.SEG_MOVETO -> builder.moveTo(point(c, 0, k));
			case PathIterator.SEG_LINETO -> builder.lineTo(point(c, 0, k));
			case PathIterator.SEG_QUADTO -> builder.quadraticTo(point(c, 0, k), point(c, 2, k));
			case PathIterator.SEG_CUBICTO -> builder.cubicTo(point(c, 0, k), point(c, 2, k), point(c, 4, k));
			default -> builder.close();
			}
		}
		return builder.build();
	}

	private static Point point(double[] c, int at, double k) {
		return new Point(c[at] * k, c[at + 1] * k);
	}
}
