package org.frisket.toolpath.internal.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.toolpath.Carriage;
import org.frisket.toolpath.Line;
import org.frisket.toolpath.RunChoices;
import org.frisket.toolpath.Stage;
import org.frisket.toolpath.ToolMotion;
import org.frisket.toolpath.internal.nest.Nest;
import org.frisket.toolpath.internal.share.SharedEdges;

/** Makes the errands of a stage of its lines, and says which have to wait for which. */
final class StageErrands {

	private final Stage stage;
	private final List<Line> lines;
	private final List<Contour> contours;
	private final Carriage carriage;
	private final RunChoices choices;
	private final Monitor monitor;
	private final LineErrands single;
	private final List<Errand> errands = new ArrayList<>();
	/** By line. */
	private final int[] errandOf;

	private StageErrands(Stage stage, List<Line> lines, Map<String, ToolMotion> tools, Carriage carriage,
			RunChoices choices, Monitor monitor) {
		this.stage = stage;
		this.lines = lines;
		this.carriage = carriage;
		this.choices = choices;
		this.monitor = monitor;
		contours = lines.stream().map(Line::contour).toList();
		single = new LineErrands(tools, carriage, choices);
		errandOf = new int[lines.size()];
	}

	static StageWork of(Stage stage, List<Line> lines, Map<String, ToolMotion> tools, Carriage carriage,
			RunChoices choices, Monitor monitor) {
		return new StageErrands(stage, lines, tools, carriage, choices, monitor).make();
	}

	private StageWork make() {
		int[] parents = new int[lines.size()];
		Arrays.fill(parents, -1);
		// pens and creasers take nothing out of the sheet: their order is free
		if (stage.cuts()) {
			parents = Nest.parents(contours, carriage.tolerance(), monitor);
		}
		SharedEdges shared = choices.sharedOnce()
				? SharedEdges.of(contours, neighbours(parents), carriage.tolerance(), monitor) : null;
		Map<Integer, List<Integer>> clusters = new LinkedHashMap<>();
		for (int i = 0; i < lines.size(); i++) {
			clusters.computeIfAbsent(shared == null ? i : shared.cluster(i), c -> new ArrayList<>()).add(i);
		}
		for (List<Integer> cluster : clusters.values()) {
			monitor.check();
			cluster.forEach(line -> errandOf[line] = errands.size());
			errands.add(cluster.size() == 1 ? single.of(lines.get(cluster.get(0)), contours.get(cluster.get(0)))
					: group(cluster, shared));
		}
		int[] after = new int[errands.size()];
		Arrays.fill(after, -1);
		for (int i = 0; i < lines.size(); i++) {
			if (parents[i] >= 0) {
				after[errandOf[i]] = errandOf[parents[i]];
			}
		}
		if (stage.cuts()) {
			outerCutsLast(after);
		}
		return smallFirst(after);
	}

	/** Lines of different parts side by side, worked alike. */
	private BiPredicate<Integer, Integer> neighbours(int[] parents) {
		return (i, k) -> {
			Line one = lines.get(i);
			Line other = lines.get(k);
			return (one.part().isEmpty() || !one.part().equals(other.part())) && parents[i] == parents[k]
					&& one.tool().equals(other.tool()) && one.passes() == other.passes();
		};
	}

	private Errand group(List<Integer> cluster, SharedEdges shared) {
		List<Errand> left = new ArrayList<>();
		Bounds box = Bounds.EMPTY;
		for (int i : cluster) {
			Line line = lines.get(i);
			box = box.with(line.contour().bounds());
			for (Contour contour : shared.left(i)) {
				Line part = new Line(line.id(), line.job(), line.part(), contour, stage, line.tool(), line.passes());
				left.add(single.of(part, line.contour()));
			}
		}
		int[] none = new int[left.size()];
		Arrays.fill(none, -1);
		Route route = Route.of(new Route.Task(left, none, carriage.home(), null),
				choices.shuffles() * left.size() / lines.size(), choices.seed(), monitor);
		return new GroupErrand(left, route, box.width() * box.height());
	}

	/**
	 * The closed line of a part that the others are within the box of comes last, also after those that cross or touch
	 * it.
	 */
	private void outerCutsLast(int[] after) {
		Map<String, List<Integer>> parts = new LinkedHashMap<>();
		for (int i = 0; i < lines.size(); i++) {
			if (!lines.get(i).part().isEmpty()) {
				parts.computeIfAbsent(lines.get(i).part(), p -> new ArrayList<>()).add(i);
			}
		}
		for (List<Integer> part : parts.values()) {
			Bounds box = part.stream().map(i -> contours.get(i).bounds()).reduce(Bounds.EMPTY, Bounds::with)
					.grown(-carriage.tolerance());
			int outer = part.stream().filter(i -> contours.get(i).isClosed())
					.max(Comparator.comparingDouble(i -> Math.abs(contours.get(i).signedArea()))).orElse(-1);
			if (outer < 0 || !contours.get(outer).bounds().with(box).equals(contours.get(outer).bounds())) {
				continue;
			}
			for (int line : part) {
				makeWait(errandOf[outer], errandOf[line], after);
			}
		}
	}

	/** Unless that would break what waits already. */
	private static void makeWait(int outer, int errand, int[] after) {
		boolean free = after[errand] < 0;
		for (int e = outer; e >= 0; e = after[e]) {
			if (e == errand) {
				return;
			}
			free |= e == after[errand];
		}
		if (free) {
			after[errand] = outer;
		}
	}

	private StageWork smallFirst(int[] after) {
		int[] order = IntStream.range(0, errands.size()).boxed()
				.sorted(Comparator.comparingDouble(e -> errands.get(e).size))
				.mapToInt(Integer::intValue).toArray();
		int[] place = new int[order.length];
		for (int i = 0; i < order.length; i++) {
			place[order[i]] = i;
		}
		return new StageWork(stage, Arrays.stream(order).mapToObj(errands::get).toList(),
				Arrays.stream(order).map(e -> after[e] < 0 ? -1 : place[after[e]]).toArray());
	}
}
