package org.frisket.print.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.frisket.geometry.Point;
import org.frisket.print.marks.Mark;
import org.frisket.print.marks.MarkPlan;
import org.frisket.print.register.FitKind;
import org.frisket.print.register.RegisterException;
import org.frisket.print.register.RegisterFinding;
import org.frisket.print.register.Registration;

/**
 * The marks of a sheet as far as they are measured, and what that says.
 *
 * @param plan     of the marks
 * @param kind     what the sheet is taken to have done
 * @param measured where each mark was found, in the order of the plan, mm; empty for one that was not measured
 * @param fit      to those that were; empty while they do not settle it
 * @param trouble  why there is no fit, for people; empty if there is one
 */
public record MeasuredSheet(MarkPlan plan, FitKind kind, List<Optional<Point>> measured, Optional<Registration> fit,
		String trouble) {

	public MeasuredSheet {
		measured = List.copyOf(measured);
	}

	/** @throws IllegalArgumentException unless there is a place or none for each mark of the plan */
	public static MeasuredSheet of(MarkPlan plan, FitKind kind, List<Optional<Point>> measured) {
		if (measured.size() != plan.marks().size()) {
			throw new IllegalArgumentException(measured.size() + " places of " + plan.marks().size() + " marks");
		}
		List<Point> from = new ArrayList<>();
		List<Point> to = new ArrayList<>();
		List<Integer> numbers = new ArrayList<>();
		for (int i = 0; i < measured.size(); i++) {
			if (measured.get(i).isPresent()) {
				from.add(plan.marks().get(i).place());
				to.add(measured.get(i).get());
				numbers.add(i + 1);
			}
		}
		try {
			return new MeasuredSheet(plan, kind, measured, Optional.of(Registration.fit(kind, from, to, numbers)), "");
		} catch (RegisterException e) {
			return new MeasuredSheet(plan, kind, measured, Optional.empty(), e.getMessage());
		}
	}

	/** How many marks are measured. */
	public int count() {
		return (int) measured.stream().filter(Optional::isPresent).count();
	}

	/** Measured minus mapped place of a mark, mm; empty if it was not measured, or nothing is fitted. @param mark from 0 */
	public Optional<Point> residual(int mark) {
		if (fit.isEmpty() || measured.get(mark).isEmpty()) {
			return Optional.empty();
		}
		Mark designed = plan.marks().get(mark);
		return measured.get(mark).map(place -> place.minus(fit.get().map().apply(designed.place())));
	}

	/** The measured mark that is off the most, from 0; empty without a fit. */
	public Optional<Integer> worst() {
		Optional<Integer> worst = Optional.empty();
		double most = -1;
		for (int i = 0; i < measured.size(); i++) {
			double off = residual(i).map(Point::length).orElse(-1.0);
			if (off > most) {
				most = off;
				worst = Optional.of(i);
			}
		}
		return worst;
	}

	/** What is doubtful about the fit, the worst first. */
	public List<RegisterFinding> findings() {
		return fit.map(Registration::findings).orElse(List.of());
	}

	/** Whether a blade may follow it. */
	public boolean isSound() {
		return fit.isPresent() && !fit.get().isBlocked();
	}

	/**
	 * How far a cut at this place may be off, as a standard error in mm in any direction; empty while nothing is fitted, or no
	 * mark is left over to judge by.
	 *
	 * @param place on the design
	 */
	public OptionalDouble errorAt(Point place) {
		if (!isSound() || fit.get().sigma().isEmpty()) {
			return OptionalDouble.empty();
		}
		double error = fit.get().errorAt(place, fit.get().sigma().getAsDouble()).length();
		return Double.isFinite(error) ? OptionalDouble.of(error) : OptionalDouble.empty();
	}
}
