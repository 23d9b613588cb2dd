package org.frisket.ui.print.internal.marks;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.frisket.geometry.Point;
import org.frisket.print.marks.MarkPlan;
import org.frisket.print.measure.ArrowScale;
import org.frisket.print.measure.Asymmetry;
import org.frisket.print.measure.MeasuredSheet;
import org.frisket.print.output.PartOnSheet;
import org.frisket.print.register.RegisterFinding;

/**
 * What is to be seen of a sheet and its marks.
 *
 * @param width       of the sheet, mm
 * @param height      of it
 * @param margin      in which no part lies, mm
 * @param printMargin that the printer leaves bare, mm
 * @param name        of the sheet
 * @param parts       on it
 * @param plan        of its marks; empty for none
 * @param residuals   of the marks that have one, in the frame of the design
 * @param factor      by which residuals are drawn longer
 * @param worst       the mark that is off the most, from 0
 * @param findings    that have a place on the sheet
 */
record MarksPicture(double width, double height, double margin, double printMargin, String name, List<PartOnSheet> parts,
		Optional<MarkPlan> plan, List<Optional<Point>> residuals, double factor, Optional<Integer> worst,
		List<RegisterFinding> findings) {

	/** An arrow is at most this share of the shorter side. */
	private static final double LONGEST_ARROW = 0.12;
	/** A shorter one is not seen, mm on the sheet. */
	private static final double LEAST_ARROW = 1;

	static MarksPicture of(SheetState state, String name) {
		List<Optional<Point>> residuals = state.measured().map(MarksPicture::residuals).orElse(List.of());
		double shorter = Math.min(state.sheet().getWidth(), state.sheet().getHeight());
		double factor = ArrowScale.of(residuals.stream().flatMap(Optional::stream).toList(), LONGEST_ARROW * shorter);
		return new MarksPicture(state.sheet().getWidth(), state.sheet().getHeight(), state.sheet().getMargin(),
				state.sheet().getPrintMargin(), name, state.parts(), state.plan(), residuals, factor,
				state.measured().filter(MeasuredSheet::isSound).flatMap(MeasuredSheet::worst), state.findings());
	}

	/** Marks that are proposed only. @param plan empty where there is no room for any */
	static MarksPicture of(SheetState state, String name, Optional<MarkPlan> plan, double printMargin,
			List<RegisterFinding> findings) {
		return new MarksPicture(state.sheet().getWidth(), state.sheet().getHeight(), state.sheet().getMargin(), printMargin,
				name, state.parts(), plan, List.of(), 1, Optional.empty(), findings);
	}

	/** Turned as the design lies, so that an arrow points to where the mark is seen on the sheet. */
	private static List<Optional<Point>> residuals(MeasuredSheet measured) {
		if (!measured.isSound()) {
			return List.of();
		}
		var map = measured.fit().orElseThrow().map();
		List<Point> places = measured.plan().places();
		return IntStream.range(0, places.size())
				.mapToObj(i -> measured.residual(i).map(off -> map.linear(places.get(i)).inverse().apply(off))).toList();
	}

	/** What gives a turned sheet away. */
	List<Asymmetry> asymmetry() {
		return plan.map(Asymmetry::of).orElse(List.of());
	}

	/** Marks, from 0, that something graver than a note is said of. */
	Set<Integer> doubtful() {
		return plan.map(each -> IntStream.range(0, each.marks().size())
				.filter(i -> findings.stream().anyMatch(finding -> finding.severity() != RegisterFinding.Severity.NOTE
						&& finding.place().equals(each.marks().get(i).place())))
				.boxed().collect(Collectors.toSet())).orElse(Set.of());
	}

	boolean hasArrows() {
		return residuals.stream().flatMap(Optional::stream).anyMatch(off -> off.length() * factor > LEAST_ARROW);
	}
}
