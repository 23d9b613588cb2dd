package org.frisket.imports.svg;

import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Outline;
import org.frisket.geometry.OutlineBuilder;
import org.frisket.geometry.PathData;
import org.frisket.geometry.PathDataException;
import org.frisket.geometry.Point;
import org.frisket.imports.Remarks;

/** The basic shapes and paths, in the pixels of their element: SVG 1.1, chapters 8 and 9. */
final class ShapeOutlines {

	private static final String COMMANDS = "MmLlHhVvCcSsQqTtAaZz";

	private final Remarks remarks;

	ShapeOutlines(Remarks remarks) {
		this.remarks = remarks;
	}

	/**
	 * Null if the element is no shape; empty if it has no extent.
	 *
	 * @param deviation how far cubics may lie from arcs, in pixels
	 */
	Outline of(Node node, Lengths lengths, double deviation) {
		return switch (node.name()) {
		case "path" -> path(node, node.attribute("d", ""), deviation);
		case "rect" -> rectangle(node, lengths, new OutlineBuilder(deviation));
		case "circle" -> {
			double r = length(node, "r", lengths, Lengths.Of.DIAGONAL);
			yield ellipse(node, r, r, lengths, new OutlineBuilder(deviation));
		}
		case "ellipse" -> {
			double rx = radius(node, "rx", "ry", lengths, Lengths.Of.WIDTH);
			double ry = radius(node, "ry", "rx", lengths, Lengths.Of.HEIGHT);
			yield ellipse(node, rx, ry, lengths, new OutlineBuilder(deviation));
		}
		case "line" -> ends(node, lengths).build();
		case "polyline", "polygon" -> corners(node).build();
		default -> null;
		};
	}

	/** 0 if it is missing or no length; the latter is told. */
	double length(Node node, String attribute, Lengths lengths, Lengths.Of of) {
		String text = node.attribute(attribute);
		if (text == null || text.equals("auto")) {
			return 0;
		}
		double value = lengths.parse(text, of);
		if (Double.isNaN(value)) {
			String shown = text.length() > 40 ? text.substring(0, 40) + "…" : text;
			remarks.once(node.place(), NLS.bind(Messages.ShapeOutlines_number, shown));
			return 0;
		}
		return value;
	}

	/** A radius that is missing is that of the other axis; negative ones count as missing. */
	private double radius(Node node, String attribute, String other, Lengths lengths, Lengths.Of of) {
		boolean own = node.attribute(attribute) != null && !node.attribute(attribute).equals("auto");
		double radius = length(node, own ? attribute : other, lengths, of);
		return Math.max(0, radius);
	}

	/** What can be read of path data. */
	Outline path(Node node, String data, double deviation) {
		if (data.strip().equals("none")) {
			return Outline.EMPTY;
		}
		try {
			return PathData.parse(data, deviation);
		} catch (PathDataException e) {
			remarks.once(node.place(), NLS.bind(Messages.ShapeOutlines_path, e.getMessage()));
			return PathData.parse(upToTheFault(data, e.position()), deviation);
		}
	}

	/** Where a pen is put down in a shape and lifted again without a way between. */
	List<Point> dots(Node node, Lengths lengths) {
		return switch (node.name()) {
		case "path" -> dots(node.attribute("d", ""));
		case "line" -> ends(node, lengths).dots();
		case "polyline", "polygon" -> corners(node).dots();
		default -> List.of();
		};
	}

	private static List<Point> dots(String data) {
		if (data.strip().equals("none")) {
			return List.of();
		}
		try {
			return PathData.dots(data);
		} catch (PathDataException e) {
			return PathData.dots(upToTheFault(data, e.position()));
		}
	}

	/** A path is drawn up to where it breaks the grammar (SVG 1.1, section 8.3.1); here, to the command before. */
	private static String upToTheFault(String data, int fault) {
		int end = Math.min(fault, data.length());
		while (end > 0) {
			end--;
			if (COMMANDS.indexOf(data.charAt(end)) >= 0) {
				String before = data.substring(0, end);
				try {
					PathData.dots(before);
					return before;
				} catch (PathDataException e) {
					end = Math.min(end, e.position());
				}
			}
		}
		return "";
	}

	private Outline rectangle(Node node, Lengths lengths, OutlineBuilder builder) {
		double x = length(node, "x", lengths, Lengths.Of.WIDTH);
		double y = length(node, "y", lengths, Lengths.Of.HEIGHT);
		double width = length(node, "width", lengths, Lengths.Of.WIDTH);
		double height = length(node, "height", lengths, Lengths.Of.HEIGHT);
		if (!(width > 0) || !(height > 0)) {
			return Outline.EMPTY;
		}
		double rx = Math.min(width / 2, radius(node, "rx", "ry", lengths, Lengths.Of.WIDTH));
		double ry = Math.min(height / 2, radius(node, "ry", "rx", lengths, Lengths.Of.HEIGHT));
		if (rx == 0 || ry == 0) {
			rx = 0;
			ry = 0;
		}
		builder.moveTo(new Point(x + rx, y));
		builder.lineTo(new Point(x + width - rx, y));
		builder.arcTo(rx, ry, 0, false, true, new Point(x + width, y + ry));
		builder.lineTo(new Point(x + width, y + height - ry));
		builder.arcTo(rx, ry, 0, false, true, new Point(x + width - rx, y + height));
		builder.lineTo(new Point(x + rx, y + height));
		builder.arcTo(rx, ry, 0, false, true, new Point(x, y + height - ry));
		builder.lineTo(new Point(x, y + ry));
		builder.arcTo(rx, ry, 0, false, true, new Point(x + rx, y));
		builder.close();
		return builder.build();
	}

	private Outline ellipse(Node node, double rx, double ry, Lengths lengths, OutlineBuilder builder) {
		if (!(rx > 0) || !(ry > 0)) {
			return Outline.EMPTY;
		}
		Point centre = new Point(length(node, "cx", lengths, Lengths.Of.WIDTH),
				length(node, "cy", lengths, Lengths.Of.HEIGHT));
		builder.startArc(centre, rx, ry, 0, 0, 2 * Math.PI);
		builder.close();
		return builder.build();
	}

	private OutlineBuilder ends(Node node, Lengths lengths) {
		OutlineBuilder builder = new OutlineBuilder();
		builder.moveTo(new Point(length(node, "x1", lengths, Lengths.Of.WIDTH),
				length(node, "y1", lengths, Lengths.Of.HEIGHT)));
		builder.lineTo(new Point(length(node, "x2", lengths, Lengths.Of.WIDTH),
				length(node, "y2", lengths, Lengths.Of.HEIGHT)));
		return builder;
	}

	private static OutlineBuilder corners(Node node) {
		List<Double> points = Numbers.list(node.attribute("points", ""));
		OutlineBuilder builder = new OutlineBuilder();
		for (int i = 0; i + 1 < points.size(); i += 2) {
			Point point = new Point(points.get(i), points.get(i + 1));
			if (i == 0) {
				builder.moveTo(point);
			} else {
				builder.lineTo(point);
			}
		}
		if (node.is("polygon")) {
			builder.close();
		}
		return builder;
	}
}
