package org.frisket.toolpath.internal.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import org.frisket.toolpath.Stroke;

/**
 * What is left of lines that share edges. Each edge bounds two of them, so all that lies within any of them has to be
 * done before the first edge: they are one errand.
 */
final class GroupErrand extends Errand {

	/** One of them, and where it is begun. */
	private record Step(Errand errand, int gate) {

		Gate gates() {
			return errand.gates().get(gate);
		}
	}

	private final List<Step> forth = new ArrayList<>();
	private final List<Step> back = new ArrayList<>();

	/** @param route through all of them, one at least */
	GroupErrand(List<Errand> errands, Route route, double size) {
		super(errands.get(0).tool, errands.get(0).passes, size);
		for (int each : route.order()) {
			Errand errand = errands.get(each);
			forth.add(new Step(errand, route.gates()[each]));
			back.add(new Step(errand, errand.back(route.gates()[each])));
		}
		Collections.reverse(back);
	}

	@Override
	List<Gate> gates() {
		return List.of(gate(forth), gate(back));
	}

	private static Gate gate(List<Step> steps) {
		return new Gate(steps.get(0).gates().in(), steps.get(steps.size() - 1).gates().out());
	}

	@Override
	void work(int gate, int first, int last, List<Stroke> strokes) {
		for (Step step : gate == 0 ? forth : back) {
			step.errand.work(step.gate, first, last, strokes);
		}
	}
}
