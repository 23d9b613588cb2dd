package org.frisket.toolpath.internal.share;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Cubic;
import org.frisket.geometry.Line;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/** A segment of a closed line, and what is left of it to be worked: stretches between parameters, ascending. */
final class Stretch {

	record Left(double from, double to) {
	}

	final int line;
	final Segment segment;
	private List<Left> left = List.of(new Left(0, 1));

	Stretch(int line, Segment segment) {
		this.line = line;
		this.segment = segment;
	}

	List<Left> left() {
		return left;
	}

	boolean isWhole() {
		return left.size() == 1 && left.get(0).from == 0 && left.get(0).to == 1;
	}

	/** Takes away what another has already. @return whether that is anything */
	boolean giveUp(Stretch other, double tolerance) {
		if (segment instanceof Line own && other.segment instanceof Line theirs) {
			boolean given = false;
			for (Left each : other.left) {
				given |= giveUp(own, theirs.at(each.from), theirs.at(each.to), tolerance);
			}
			return given;
		}
		if (segment instanceof Cubic own && other.segment instanceof Cubic theirs && other.isWhole() && !left.isEmpty()
				&& (alike(own, theirs, tolerance) || alike(own, theirs.reversed(), tolerance))) {
			left = List.of();
			return true;
		}
		return false;
	}

	private static boolean alike(Cubic one, Cubic other, double tolerance) {
		return one.start().distance(other.start()) <= tolerance && one.control1().distance(other.control1()) <= tolerance
				&& one.control2().distance(other.control2()) <= tolerance && one.end().distance(other.end()) <= tolerance;
	}

	private boolean giveUp(Line own, Point p, Point q, double tolerance) {
		double length = own.length();
		Point along = own.startTangent();
		double fromP = along.dot(p.minus(own.start()));
		double fromQ = along.dot(q.minus(own.start()));
		double low = Math.max(0, Math.min(fromP, fromQ));
		double high = Math.min(length, Math.max(fromP, fromQ));
		// what is as short as the tolerance may as well cross
		if (high - low <= 2 * tolerance) {
			return false;
		}
		double offP = along.cross(p.minus(own.start()));
		double offQ = along.cross(q.minus(own.start()));
		double slope = (offQ - offP) / (fromQ - fromP);
		if (Math.abs(offP + slope * (low - fromP)) > tolerance || Math.abs(offP + slope * (high - fromP)) > tolerance) {
			return false;
		}
		return remove(low <= tolerance ? 0 : low / length, high >= length - tolerance ? 1 : high / length);
	}

	private boolean remove(double from, double to) {
		List<Left> kept = new ArrayList<>();
		boolean removed = false;
		for (Left each : left) {
			if (each.to <= from || each.from >= to) {
				kept.add(each);
				continue;
			}
			removed = true;
			if (each.from < from) {
				kept.add(new Left(each.from, from));
			}
			if (each.to > to) {
				kept.add(new Left(to, each.to));
			}
		}
		left = kept;
		return removed;
	}
}
