package org.frisket.print.measure;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Point;
import org.frisket.print.marks.Mark;
import org.frisket.print.marks.MarkPlan;

/**
 * What gives away that a sheet was laid the other way round: a mark where a half turn of the sheet finds none like it.
 *
 * @param mark its index from 0
 * @param bare where its like would have to be on a sheet that looks the same after a half turn, mm
 * @param free whether there is no mark at all, not even an unlike one
 */
public record Asymmetry(int mark, Point bare, boolean free) {

	/** As {@code MarkCheck} has it: nearer than this share of the marks' spread is alike. */
	private static final double ALIKE = 0.02;

	/** In the order of the marks; empty if the sheet looks the same after a half turn. */
	public static List<Asymmetry> of(MarkPlan plan) {
		Point centre = new Point(plan.width() / 2, plan.height() / 2);
		double near = ALIKE * plan.places().stream().mapToDouble(place -> place.distance(centre)).average().orElse(0);
		List<Asymmetry> odd = new ArrayList<>();
		for (int i = 0; i < plan.marks().size(); i++) {
			Mark mark = plan.marks().get(i);
			Point turned = centre.times(2).minus(mark.place());
			if (plan.marks().stream().noneMatch(other -> other.design().kind() == mark.design().kind()
					&& other.place().distance(turned) < near)) {
				odd.add(new Asymmetry(i, turned, plan.places().stream().noneMatch(place -> place.distance(turned) < near)));
			}
		}
		return odd;
	}
}
