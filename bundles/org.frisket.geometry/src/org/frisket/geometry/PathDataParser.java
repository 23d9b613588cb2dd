package org.frisket.geometry;

import java.util.List;

/** Reads SVG path data by the grammar of SVG 1.1, section 8.3.9. */
final class PathDataParser {

	private final PathDataScanner scanner;
	private final OutlineBuilder builder;

	PathDataParser(String text, OutlineBuilder builder) {
		scanner = new PathDataScanner(text);
		this.builder = builder;
	}

	Outline parse() {
		run();
		return builder.build();
	}

	/** See {@link OutlineBuilder#dots()}. */
	List<Point> dots() {
		run();
		return builder.dots();
	}

	private void run() {
		scanner.skipSpace();
		boolean first = true;
		while (!scanner.atEnd()) {
			int position = scanner.position();
			char command = scanner.command();
			if (first && Character.toUpperCase(command) != 'M') {
				throw new PathDataException(position, "must begin with a moveto, found '" + command + "'");
			}
			first = false;
			run(command);
			scanner.skipSpace();
		}
	}

	/** A command and all the argument groups behind it. */
	private void run(char command) {
		boolean relative = Character.isLowerCase(command);
		char kind = Character.toUpperCase(command);
		if (kind == 'Z') {
			builder.close();
			return;
		}
		scanner.skipSpace();
		do {
			step(kind, relative ? builder.current() : Point.ORIGIN);
			if (kind == 'M') {
				kind = 'L';
			}
		} while (scanner.moreArguments());
	}

	private void step(char kind, Point origin) {
		switch (kind) {
		case 'M' -> builder.moveTo(point(origin));
		case 'L' -> builder.lineTo(point(origin));
		case 'H' -> builder.lineTo(new Point(origin.x() + scanner.number(), builder.current().y()));
		case 'V' -> builder.lineTo(new Point(builder.current().x(), origin.y() + scanner.number()));
		case 'C' -> builder.cubicTo(point(origin), next(origin), next(origin));
		case 'S' -> builder.smoothCubicTo(point(origin), next(origin));
		case 'Q' -> builder.quadraticTo(point(origin), next(origin));
		case 'T' -> builder.smoothQuadraticTo(point(origin));
		default -> arc(origin);
		}
	}

	private void arc(Point origin) {
		double rx = scanner.number();
		scanner.separator();
		double ry = scanner.number();
		scanner.separator();
		double turn = Math.toRadians(scanner.number());
		scanner.separator();
		boolean large = scanner.flag();
		scanner.separator();
		boolean sweep = scanner.flag();
		builder.arcTo(rx, ry, turn, large, sweep, next(origin));
	}

	private Point next(Point origin) {
		scanner.separator();
		return point(origin);
	}

	private Point point(Point origin) {
		double x = scanner.number();
		scanner.separator();
		return origin.plus(new Point(x, scanner.number()));
	}
}
