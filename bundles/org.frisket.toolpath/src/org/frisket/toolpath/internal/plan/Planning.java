package org.frisket.toolpath.internal.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.toolpath.Carriage;
import org.frisket.toolpath.Leg;
import org.frisket.toolpath.Line;
import org.frisket.toolpath.Run;
import org.frisket.toolpath.RunChoices;
import org.frisket.toolpath.RunChoices.PassOrder;
import org.frisket.toolpath.Stage;
import org.frisket.toolpath.Stroke;
import org.frisket.toolpath.ToolMotion;

/**
 * The planning of one run: stages one after the other, in each the legs of its tools, in each the errands on a short
 * way.
 */
public final class Planning {

	/** Of all the work, before the first leg is ordered. */
	private static final double PREPARING = 0.4;

	private final Map<String, ToolMotion> tools;
	private final Carriage carriage;
	private final RunChoices choices;
	private final Monitor monitor;
	private final List<Leg> legs = new ArrayList<>();
	private Point at;
	private int errands;
	private int ordered;

	public Planning(Map<String, ToolMotion> tools, Carriage carriage, RunChoices choices, Monitor monitor) {
		this.tools = tools;
		this.carriage = carriage;
		this.choices = choices;
		this.monitor = monitor;
		at = carriage.home();
	}

	/** @param lines that can be worked, see {@link Intake} */
	public Run run(List<Line> lines) {
		List<StageWork> stages = new ArrayList<>();
		int prepared = 0;
		for (Stage stage : Stage.values()) {
			List<Line> own = lines.stream().filter(line -> line.stage() == stage).toList();
			if (!own.isEmpty()) {
				StageWork work = StageErrands.of(stage, own, tools, carriage, choices, monitor);
				stages.add(work);
				errands += work.errands().size();
				prepared += own.size();
				monitor.worked(PREPARING * prepared / lines.size());
			}
		}
		List<ToolOrder.Ends> ends = ToolOrder.of(stages.stream()
				.map(work -> work.errands().stream().map(errand -> errand.tool).distinct().sorted().toList()).toList());
		for (int i = 0; i < stages.size(); i++) {
			List<int[]> parts = LegParting.of(stages.get(i), ends.get(i));
			for (int k = 0; k < parts.size(); k++) {
				leg(stages.get(i), parts.get(k), i == stages.size() - 1 && k == parts.size() - 1);
			}
		}
		monitor.worked(1);
		return new Run(legs);
	}

	private void leg(StageWork work, int[] part, boolean last) {
		List<Stroke> strokes = new ArrayList<>();
		int most = Arrays.stream(part).map(errand -> work.errands().get(errand).passes).max().orElseThrow();
		int rounds = choices.passOrder() == PassOrder.PART ? 1 : most;
		for (int round = 1; round <= rounds; round++) {
			// all lines are cut through in the last round, so fewer passes begin later
			int missing = rounds - round;
			int[] own = rounds == 1 ? part
					: Arrays.stream(part).filter(errand -> work.errands().get(errand).passes > missing).toArray();
			round(work, own, rounds == 1 ? -1 : missing, last && round == rounds, strokes);
		}
		legs.add(new Leg(work.stage(), work.errands().get(part[0]).tool, strokes));
		ordered += part.length;
		monitor.worked(PREPARING + (1 - PREPARING) * ordered / errands);
	}

	/** @param missing how many rounds are still to come; -1 if all passes are made at once */
	private void round(StageWork work, int[] part, int missing, boolean last, List<Stroke> strokes) {
		List<Errand> own = Arrays.stream(part).mapToObj(work.errands()::get).toList();
		Route route = Route.of(new Route.Task(own, after(work, part), at, last ? carriage.home() : null),
				choices.shuffles() * part.length / errands, choices.seed(), monitor);
		for (int each : route.order()) {
			monitor.check();
			Errand errand = own.get(each);
			int pass = missing < 0 ? 1 : errand.passes - missing;
			errand.work(route.gates()[each], pass, missing < 0 ? errand.passes : pass, strokes);
		}
		at = strokes.get(strokes.size() - 1).end();
	}

	/** Who waits for whom in a part of the errands; what is not in it is left out. */
	private static int[] after(StageWork work, int[] part) {
		int[] place = new int[work.errands().size()];
		Arrays.fill(place, -1);
		for (int i = 0; i < part.length; i++) {
			place[part[i]] = i;
		}
		int[] after = new int[part.length];
		for (int i = 0; i < part.length; i++) {
			int next = work.after()[part[i]];
			while (next >= 0 && place[next] < 0) {
				next = work.after()[next];
			}
			after[i] = next < 0 ? -1 : place[next];
		}
		return after;
	}
}
