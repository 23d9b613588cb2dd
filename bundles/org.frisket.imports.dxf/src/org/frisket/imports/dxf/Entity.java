package org.frisket.imports.dxf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Point;
import org.frisket.imports.UnreadableArtException;

/** One entity as it stands in the file: its groups, and the entities that belong to it, such as vertices. */
final class Entity {

	/** How large a coordinate may be, in whatever unit. */
	private static final double LARGEST = 1e12;

	private final String file;
	private final String type;
	private final int line;
	private final List<Group> groups = new ArrayList<>(0);
	private final List<Entity> parts = new ArrayList<>(0);

	/** @param file what messages call the file */
	Entity(String file, Group start) {
		this.file = file;
		type = start.value().toUpperCase(Locale.ROOT);
		line = start.line();
	}

	void add(Group group) {
		groups.add(group);
	}

	void add(Entity part) {
		parts.add(part);
	}

	String type() {
		return type;
	}

	/** Where it begins, from 1. */
	int line() {
		return line;
	}

	List<Entity> parts() {
		return parts;
	}

	/** In the order of the file, for entities whose groups come in repeating runs. */
	List<Group> groups() {
		return groups;
	}

	String text(int code, String otherwise) {
		for (Group group : groups) {
			if (group.code() == code) {
				return group.value();
			}
		}
		return otherwise;
	}

	String layer() {
		return text(8, "0");
	}

	double number(int code, double otherwise) throws UnreadableArtException {
		for (Group group : groups) {
			if (group.code() == code) {
				return number(group);
			}
		}
		return otherwise;
	}

	int integer(int code, int otherwise) throws UnreadableArtException {
		return (int) number(code, otherwise);
	}

	boolean flag(int code, int bit) throws UnreadableArtException {
		return (integer(code, 0) & bit) != 0;
	}

	/** The point whose x has the code; y has it plus 10. */
	Point point(int code) throws UnreadableArtException {
		return new Point(number(code, 0), number(code + 10, 0));
	}

	List<Double> numbers(int code) throws UnreadableArtException {
		List<Double> numbers = new ArrayList<>();
		for (Group group : groups) {
			if (group.code() == code) {
				numbers.add(number(group));
			}
		}
		return numbers;
	}

	/** All points whose x has the code, each with the y behind it. */
	List<Point> points(int code) throws UnreadableArtException {
		List<Point> points = new ArrayList<>();
		for (Group group : groups) {
			if (group.code() == code) {
				points.add(new Point(number(group), 0));
			} else if (group.code() == code + 10 && !points.isEmpty()) {
				int last = points.size() - 1;
				points.set(last, new Point(points.get(last).x(), number(group)));
			}
		}
		return points;
	}

	double number(Group group) throws UnreadableArtException {
		try {
			double number = Double.parseDouble(group.value());
			if (Math.abs(number) <= LARGEST) {
				return number;
			}
		} catch (NumberFormatException e) {
			// told below
		}
		throw new UnreadableArtException(file, GroupReader.place(group.line()),
				NLS.bind(Messages.GroupReader_number, group.value()));
	}
}
