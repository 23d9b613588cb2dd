package org.frisket.prepare.internal;

import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.Combining;
import org.frisket.geometry.form.RoundedCorners;
import org.frisket.geometry.form.Split;
import org.frisket.model.Combination;
import org.frisket.model.CombinationRule;
import org.frisket.prepare.Severity;
import org.frisket.prepare.Uncleaned;

/** The shape of a combination from its parts. */
final class CombinationStep {

	private CombinationStep() {
	}

	/** A part where it stands. */
	record Part(Region region, List<Contour> lines) {
	}

	static Shape shape(Combination combination, List<Part> parts, Tolerance tolerance, Monitor monitor) {
		List<Region> regions = parts.stream().map(Part::region).toList();
		if (regions.stream().allMatch(Region::isEmpty)) {
			return Shape.EMPTY;
		}
		CombinationRule rule = combination.getRule();
		Optional<Region> made;
		if (rule == CombinationRule.LEFT || rule == CombinationRule.RIGHT) {
			made = side(rule, parts, tolerance, monitor);
			if (made.isEmpty()) {
				return nothing("combination-no-line", regions, Messages.CombinationStep_noLine,
						Messages.CombinationStep_noLineCure);
			}
		} else {
			made = Optional.of(combining(rule).of(regions, tolerance, monitor));
		}
		Region region = RoundedCorners.of(made.get(), Math.max(0, combination.getCornerRadius()), tolerance, monitor);
		if (region.isEmpty()) {
			return nothing("combination-empty", regions, Messages.CombinationStep_empty, Messages.CombinationStep_emptyCure);
		}
		return new Shape(region, List.of(), Uncleaned.of(region), List.of());
	}

	private static Shape nothing(String id, List<Region> regions, String message, String cure) {
		Point place = regions.stream().filter(region -> !region.isEmpty()).findFirst().map(r -> r.bounds().centre())
				.orElse(Point.ORIGIN);
		return Shape.nothing(new Shape.Remark(id, Severity.CAUTION, place, message, cure));
	}

	private static Combining combining(CombinationRule rule) {
		return switch (rule) {
		case SUBTRACT -> Combining.SUBTRACT;
		case INTERSECT -> Combining.INTERSECT;
		case EXCLUDE -> Combining.EXCLUDE;
		case UNITE, LEFT, RIGHT -> Combining.UNITE;
		};
	}

	/** Empty if the last part has no line to split along. */
	private static Optional<Region> side(CombinationRule rule, List<Part> parts, Tolerance tolerance,
			Monitor monitor) {
		Part last = parts.get(parts.size() - 1);
		List<Contour> edges = last.lines().isEmpty() ? last.region().contours() : last.lines();
		if (parts.size() < 2 || edges.isEmpty() || !(edges.get(0).length() > 0)) {
			return Optional.empty();
		}
		Region whole = Combining.UNITE.of(parts.subList(0, parts.size() - 1).stream().map(Part::region).toList(), tolerance,
				monitor);
		Split split = Split.along(edges.get(0), whole, tolerance, monitor);
		return Optional.of(rule == CombinationRule.LEFT ? split.left() : split.right());
	}

	static Shape ofItself() {
		return Shape.nothing(new Shape.Remark("made-of-itself", Severity.BLOCKING, Point.ORIGIN,
				Messages.CombinationStep_ofItself, Messages.CombinationStep_ofItselfCure));
	}
}
