package org.frisket.geometry.measure;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/**
 * For places along the boundary of a piece the largest disc inside the piece that touches it there. Such a disc is
 * shrunk until nothing of the boundary lies in it (Ma, Bae and Choi 2012); its centre is a place of the medial axis.
 * A place of the boundary is covered by discs of a width just if its own disc is not smaller.
 * <p>
 * At a corner that juts out the disc has no size; about one that juts in it turns, and is found for several directions.
 */
final class TouchingDiscs {

	/** Between neighbours on a straight edge, as a part of the piece's size; halved where the discs change unevenly. */
	private static final double SPACING = 1.0 / 24;
	private static final int HALVINGS = 8;
	/** In radians; by what turns less a contour is smooth. */
	private static final double SMOOTH = Math.toRadians(2);
	private static final double FAN = Math.toRadians(6);
	private static final int MOST_ROUNDS = 60;
	private static final double UNEVEN = 0.001;
	private static final double SLACK = 0.05;
	private static final double JOINT = 5e-4;

	/** A place, where its disc lies from there, the disc's radius, and the edge it touches besides. */
	record Contact(Point place, Point inwards, double radius, Point foot, int edge) {

		Point centre() {
			return place.plus(inwards.times(radius));
		}
	}

	/** Places along one contour in their order. */
	private final List<List<Contact>> rings = new ArrayList<>();
	/** By the edge that a disc may touch: its contour and the numbers of the first and the last place on it. */
	private final int[] ringOf;
	private final int[] firstOn;
	private final int[] lastOn;

	private final double deviation;
	private final double spacing;
	private final double largest;
	private final EdgeGrid grid;
	/** The last one made, which lies beside the next. */
	private Contact hint;

	private record Chord(Point from, Point to, Point fromInwards, Point toInwards, boolean straight) {
	}

	/** @param deviation in mm of the chords that stand for curves */
	TouchingDiscs(Piece piece, double deviation) {
		this.deviation = deviation;
		double width = piece.bounds().width();
		double height = piece.bounds().height();
		spacing = Math.max(width, height) * SPACING;
		largest = Math.min(width, height) / 2 + deviation;
		List<List<Chord>> chords = piece.contours().stream().map(contour -> chords(contour, deviation)).toList();
		int count = chords.stream().mapToInt(List::size).sum();
		double[][] ends = new double[4][count];
		ringOf = new int[count];
		firstOn = new int[count];
		lastOn = new int[count];
		int at = 0;
		for (int ring = 0; ring < chords.size(); ring++) {
			for (Chord chord : chords.get(ring)) {
				ends[0][at] = chord.from().x();
				ends[1][at] = chord.from().y();
				ends[2][at] = chord.to().x();
				ends[3][at] = chord.to().y();
				ringOf[at++] = ring;
			}
		}
		grid = new EdgeGrid(ends[0], ends[1], ends[2], ends[3]);
		int edge = 0;
		for (List<Chord> ring : chords) {
			rings.add(contacts(ring, edge));
			edge += ring.size();
		}
	}

	List<List<Contact>> rings() {
		return rings;
	}

	/** The contour that a contact's disc touches besides. */
	int ringOf(Contact contact) {
		return ringOf[contact.edge()];
	}

	/** The number on that contour of the place nearest to where it touches. */
	int placeAt(Contact contact) {
		List<Contact> ring = rings.get(ringOf(contact));
		int low = firstOn[contact.edge()];
		int high = lastOn[contact.edge()];
		Point start = ring.get(low).place();
		double along = start.distance(contact.foot());
		while (high - low > 1) {
			int middle = (low + high) / 2;
			if (start.distance(ring.get(middle).place()) < along) {
				low = middle;
			} else {
				high = middle;
			}
		}
		return along - start.distance(ring.get(low).place()) < start.distance(ring.get(high % ring.size()).place()) - along
				? low
				: high % ring.size();
	}

	/** Radius in mm of the largest disc of all. */
	double largestRadius() {
		return rings.stream().flatMap(List::stream).mapToDouble(Contact::radius).max().orElse(0);
	}

	private static List<Chord> chords(Contour contour, double deviation) {
		List<Chord> chords = new ArrayList<>();
		for (Segment segment : contour.segments()) {
			if (segment instanceof Line) {
				Point inwards = inwards(segment.startTangent());
				add(chords, segment.start(), segment.end(), inwards, inwards, true);
				continue;
			}
			double[] before = { 0 };
			segment.flatten(deviation, t -> {
				Point start = before[0] == 0 ? segment.startTangent() : segment.derivative(before[0]).unit();
				Point end = t == 1 ? segment.endTangent() : segment.derivative(t).unit();
				add(chords, segment.at(before[0]), segment.at(t), inwards(start), inwards(end), false);
				before[0] = t;
			});
		}
		return chords;
	}

	private static void add(List<Chord> chords, Point from, Point to, Point fromInwards, Point toInwards,
			boolean straight) {
		if (!from.equals(to)) {
			chords.add(new Chord(from, to, fromInwards, toInwards, straight));
		}
	}

	/** The piece lies to the left of its contours to the viewer, where y points down. */
	private static Point inwards(Point tangent) {
		return new Point(tangent.y(), -tangent.x());
	}

	private List<Contact> contacts(List<Chord> ring, int firstEdge) {
		List<Contact> contacts = new ArrayList<>();
		for (int i = 0; i < ring.size(); i++) {
			Chord before = ring.get((i + ring.size() - 1) % ring.size());
			Chord chord = ring.get(i);
			// towards the inside is a turn to the left, a corner that juts out
			double turn = turn(before.toInwards(), chord.fromInwards());
			boolean corner = turn > SMOOTH;
			if (corner) {
				contacts.add(new Contact(chord.from(), chord.fromInwards(), 0, chord.from(), -1));
			} else {
				int steps = turn < -SMOOTH ? (int) Math.ceil(-turn / FAN) : 0;
				for (int k = 0; k <= steps; k++) {
					contacts.add(contact(chord.from(),
							turned(before.toInwards(), steps == 0 ? turn / 2 : turn * k / steps)));
				}
			}
			firstOn[firstEdge + i] = contacts.size() - 1;
			Chord after = ring.get((i + 1) % ring.size());
			boolean toCorner = turn(chord.toInwards(), after.fromInwards()) > SMOOTH;
			if (chord.straight() || corner || toCorner) {
				addAlong(chord, corner, toCorner, contacts);
			}
			lastOn[firstEdge + i] = contacts.size();
		}
		return contacts;
	}

	/** In radians; positive where a contour turns towards the piece. */
	private static double turn(Point before, Point after) {
		return -Math.atan2(before.cross(after), before.x() * after.x() + before.y() * after.y());
	}

	private static Point turned(Point direction, double angle) {
		double cos = Math.cos(angle);
		double sin = -Math.sin(angle);
		return new Point(direction.x() * cos - direction.y() * sin, direction.x() * sin + direction.y() * cos);
	}

	/** Between the ends of a straight edge or beside a corner; the ends themselves are there already or come next. */
	private void addAlong(Chord chord, boolean fromCorner, boolean toCorner, List<Contact> contacts) {
		int steps = chord.straight() ? Math.max(2, (int) Math.ceil(chord.from().distance(chord.to()) / spacing)) : 1;
		Contact before = along(chord, 0, fromCorner);
		for (int i = 1; i <= steps; i++) {
			Contact next = along(chord, (double) i / steps, i == steps && toCorner);
			between(before, next, HALVINGS, contacts);
			if (i < steps) {
				contacts.add(next);
			}
			before = next;
		}
	}

	private Contact along(Chord chord, double t, boolean atCorner) {
		Point place = chord.from().towards(chord.to(), t);
		Point inwards = chord.fromInwards().towards(chord.toInwards(), t).unit();
		return atCorner ? new Contact(place, inwards, 0, place, -1) : contact(place, inwards);
	}

	private void between(Contact before, Contact after, int halvings, List<Contact> contacts) {
		if (halvings == 0 || before.place().distance(after.place()) < 8 * deviation) {
			return;
		}
		Contact middle = contact(before.place().towards(after.place(), 0.5),
				before.inwards().towards(after.inwards(), 0.5).unit());
		double even = (before.radius() + after.radius()) / 2;
		if (Math.abs(middle.radius() - even) <= UNEVEN * middle.radius() + deviation / 8) {
			return;
		}
		between(before, middle, halvings - 1, contacts);
		contacts.add(middle);
		between(middle, after, halvings - 1, contacts);
	}

	private Contact contact(Point place, Point inwards) {
		double radius = largest;
		int touched = -1;
		Point foot = place;
		if (hint != null) {
			// no disc reaches beyond any place of the boundary, and the neighbour's is mostly the right one
			double atMost = radius(place, inwards, hint.foot());
			if (atMost < radius) {
				radius = atMost;
				foot = hint.foot();
				touched = hint.edge();
			}
		}
		for (int round = 0; round < MOST_ROUNDS; round++) {
			int edge = grid.nearest(place.x() + inwards.x() * radius, place.y() + inwards.y() * radius,
					radius - slack(radius));
			if (edge < 0) {
				break;
			}
			Point nearest = new Point(grid.nearestX(), grid.nearestY());
			double smaller = radius(place, inwards, nearest);
			if (nearest.distance(place) < deviation || !(smaller < radius)) {
				break;
			}
			radius = smaller;
			foot = nearest;
			touched = edge;
		}
		Contact contact = new Contact(place, inwards, radius, foot, touched);
		hint = touched < 0 ? hint : contact;
		return contact;
	}

	/** By how much the boundary may reach into a disc: chords stray from curves, and joints are not quite smooth. */
	private double slack(double radius) {
		return Math.min(Math.max(deviation, JOINT * radius), SLACK * radius);
	}

	/** Of the disc that touches at a place and has another on its rim. */
	private static double radius(Point place, Point inwards, Point rim) {
		double dx = rim.x() - place.x();
		double dy = rim.y() - place.y();
		double depth = dx * inwards.x() + dy * inwards.y();
		return depth > 0 ? (dx * dx + dy * dy) / (2 * depth) : Double.POSITIVE_INFINITY;
	}
}
