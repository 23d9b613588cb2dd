package org.frisket.geometry.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;

import org.frisket.geometry.Point;
import org.frisket.geometry.measure.TouchingDiscs.Contact;

/** The places along one contour whose discs are known, and the stretches of it along which these are small. */
final class DiscRing {

	/** Places by which a disc may touch beside the end of a stretch and still be counted to it. */
	static final int SLACK = 2;
	/** Of a disc's radius: where the narrowest disc of a neck touches lies a diameter apart. */
	private static final double ACROSS = 1.98;
	/** In radians, of the turn round a tip; and how far apart the one disc at its mouth may seem, of its width. */
	private static final double BLUNT = Math.toRadians(150);
	private static final double APART = 0.1;
	/** Of the tolerance; what counts as covered. */
	private static final double FILM = 0.2;

	private final List<Contact> contacts;
	private final double[] radius;
	private final int self;
	private final int[] footRing;
	private final int[] foot;

	private DiscRing(TouchingDiscs discs, int self) {
		this.self = self;
		contacts = discs.rings().get(self);
		radius = contacts.stream().mapToDouble(Contact::radius).toArray();
		footRing = new int[radius.length];
		foot = new int[radius.length];
		for (int i = 0; i < radius.length; i++) {
			Contact contact = contacts.get(i);
			boolean across = contact.edge() >= 0
					&& contact.place().distance(contact.foot()) > ACROSS * contact.radius();
			footRing[i] = across ? discs.ringOf(contact) : -1;
			foot[i] = across ? discs.placeAt(contact) : -1;
		}
	}

	static List<DiscRing> of(TouchingDiscs discs) {
		List<DiscRing> rings = new ArrayList<>();
		for (int i = 0; i < discs.rings().size(); i++) {
			rings.add(new DiscRing(discs, i));
		}
		return rings;
	}

	/** The stretches along which discs are smaller than this radius; one that never ends is all of the contour. */
	List<Run> runs(double below) {
		List<Run> runs = new ArrayList<>();
		int size = radius.length;
		int start = 0;
		while (start < size && radius[start] < below) {
			start++;
		}
		if (start == size) {
			return List.of(new Run(0, size - 1));
		}
		int end = start + size;
		for (int i = start + 1; i < end; i++) {
			if (radius[i % size] < below) {
				int first = i;
				while (radius[(i + 1) % size] < below) {
					i++;
				}
				runs.add(new Run(first, i));
			}
		}
		return runs;
	}

	/** How many places there are. */
	int size() {
		return radius.length;
	}

	/** Told of a place on a ring, given by their numbers, and where it is. */
	interface Foot {

		void at(int ring, int place, Point at);
	}

	/** From one place to another; the last one may lie beyond the start of the contour. */
	final class Run {

		private final int first;
		private final int last;

		Run(int first, int last) {
			this.first = first;
			this.last = last;
		}

		private DiscRing ring() {
			return DiscRing.this;
		}

		boolean overlaps(Run other) {
			int size = radius.length;
			return ring() == other.ring() && (Math.floorMod(other.first - first, size) <= last - first
					|| Math.floorMod(first - other.first, size) <= other.last - other.first);
		}

		private boolean holds(int ring, int place, Point at) {
			if (ring != self) {
				return false;
			}
			int size = radius.length;
			return last - first + 1 >= size || Math.floorMod(place - first + SLACK, size) <= last - first + 2 * SLACK
					|| at.equals(contacts.get(first % size).place()) || at.equals(contacts.get(last % size).place());
		}

		int ringNumber() {
			return self;
		}

		void eachPlace(IntConsumer visit) {
			for (int i = first; i <= last; i++) {
				visit.accept(i % radius.length);
			}
		}

		/** Where discs along this stretch touch on their far side. */
		void eachFoot(Foot visit) {
			for (int i = first; i <= last; i++) {
				int at = i % radius.length;
				if (foot[at] >= 0) {
					visit.at(footRing[at], foot[at], contacts.get(at).foot());
				}
			}
		}

		List<Point> ends() {
			return List.of(contacts.get(first % radius.length).place(), contacts.get(last % radius.length).place());
		}

		/** Whether this is all of its contour, or discs along it touch beyond it on their far side. */
		boolean isNeck() {
			if (last - first + 1 >= radius.length) {
				return true;
			}
			for (int i = first; i <= last; i++) {
				int at = i % radius.length;
				if (foot[at] >= 0 && !holds(footRing[at], foot[at], contacts.get(at).foot())) {
					return true;
				}
			}
			return false;
		}

		/** The smallest disc that is none of a corner. */
		Contact narrowest() {
			Contact narrowest = contacts.get((first + last) / 2 % radius.length);
			boolean across = false;
			for (int i = first; i <= last; i++) {
				int at = i % radius.length;
				if (foot[at] >= 0 && (!across || radius[at] < narrowest.radius())) {
					narrowest = contacts.get(at);
					across = true;
				}
			}
			return narrowest;
		}

		/** Whether what lies along this stretch, up to the disc at its ends, is deeper than it is wide there. */
		boolean isStroke(double width, double tolerance) {
			int size = radius.length;
			Contact before = contacts.get(Math.floorMod(first - 1, size));
			Contact after = contacts.get((last + 1) % size);
			Point one = centre(before, contacts.get(first % size), width / 2);
			Point other = centre(after, contacts.get(last % size), width / 2);
			double turn = left(before.inwards(), after.inwards());
			if (turn < BLUNT && one.distance(other) > APART * width) {
				// too small against the steps along the boundary to be seen well, and no stroke at any size
				return false;
			}
			Point centre = one.towards(other, 0.5);
			double depth = 0;
			for (int i = first; i <= last; i++) {
				depth = Math.max(depth, centre.distance(contacts.get(i % size).place()));
			}
			depth -= width / 2;
			if (depth <= tolerance) {
				return false;
			}
			double film = FILM * tolerance;
			double reach = width / 2 + film;
			double mouth = Math.max(0, turn - 2 * Math.acos(width / 2 / reach)) * reach;
			// a disc touches both sides of a corner this much farther back once it is grown by the film
			return mouth <= tolerance || depth > mouth + 2 * Math.sqrt(width * film);
		}
	}

	/** Of the disc of a radius between two neighbours of which one has a larger and one a smaller. */
	private static Point centre(Contact larger, Contact smaller, double radius) {
		double t = larger.radius() > smaller.radius()
				? (radius - smaller.radius()) / (larger.radius() - smaller.radius())
				: 1;
		return smaller.place().towards(larger.place(), t).plus(larger.inwards().times(radius));
	}

	/** How far one direction has to be turned to the left to be the other, in radians, less than a full turn. */
	private static double left(Point one, Point other) {
		double turn = -Math.atan2(one.cross(other), one.dot(other));
		return turn < 0 ? turn + 2 * Math.PI : turn;
	}
}
