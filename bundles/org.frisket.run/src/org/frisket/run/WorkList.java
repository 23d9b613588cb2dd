package org.frisket.run;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.material.tools.Blade;
import org.frisket.material.tools.NativeScale;
import org.frisket.material.tools.Tool;
import org.frisket.material.trials.Settings;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedLayer;
import org.frisket.toolpath.Leg;
import org.frisket.toolpath.Line;
import org.frisket.toolpath.Stage;
import org.frisket.toolpath.ToolMotion;
import org.frisket.toolpath.blade.TrailingBlade;
import org.frisket.toolpath.motion.Drive;

/** The lines of a load, with what each is worked with, and how. */
final class WorkList {

	/** Slower than this in mm/s, a setting means standing still. */
	private static final double SLOWEST = 1;

	/** One operation of an element. @param stock id of its layer's stock, may be null */
	record Item(PreparedElement element, Operation operation, Tool tool, String stock, String job, String part) {

		Stage stage() {
			return Stage.valueOf(operation.getKind().name());
		}
	}

	private record Key(OperationKind kind, Tool tool, String stock) {
	}

	private final Workshop workshop;
	private final List<Item> items = new ArrayList<>();
	private final Map<Key, LegWork> works = new LinkedHashMap<>();
	private final Map<Key, String> ids = new HashMap<>();
	private final List<Line> lines = new ArrayList<>();
	private final Map<String, Integer> passes = new HashMap<>();

	WorkList(Load load, Workshop workshop, Monitor monitor) {
		this.workshop = workshop;
		gather(load);
		choose(load);
		for (Item item : items) {
			monitor.check();
			addLines(item);
		}
	}

	private void gather(Load load) {
		int index = 0;
		for (PreparedLayer layer : load.content().layers()) {
			for (PreparedElement element : layer.shown()) {
				index++;
				for (Operation operation : element.operations()) {
					if (operation.getKind() != OperationKind.PRINT) {
						items.add(new Item(element, operation, workshop.tool(operation), layer.layer().getStock(),
								load.job(element), load.part(element, index)));
					}
				}
			}
		}
	}

	private void choose(Load load) {
		SettingsChoice choice = new SettingsChoice(workshop);
		for (Item item : items) {
			Key key = key(item);
			if (!works.containsKey(key)) {
				LegWork work = choice.choose(key.kind(), key.tool(), key.stock(), load.jobsAndOriginals());
				ids.put(key, id(key, work));
				works.put(key, work);
			}
		}
	}

	private static Key key(Item item) {
		return new Key(item.operation().getKind(), item.tool(), item.stock());
	}

	/** That of the tool; another one where it has to be set otherwise for something else before. */
	private String id(Key key, LegWork work) {
		String tool = key.tool().id();
		for (Map.Entry<Key, LegWork> before : works.entrySet()) {
			if (before.getKey().tool().equals(key.tool()) && isSetAlike(before.getValue(), work)) {
				return ids.get(before.getKey());
			}
		}
		String id = tool;
		for (int i = 2; ids.containsValue(id); i++) {
			id = tool + ' ' + key.kind().getLiteral() + (i == 2 ? "" : " " + (i - 1));
		}
		return id;
	}

	private static boolean isSetAlike(LegWork one, LegWork other) {
		Settings a = one.settings();
		Settings b = other.settings();
		return one.stock().equals(other.stock()) && a.exposure() == b.exposure() && a.pressure() == b.pressure()
				&& a.speed() == b.speed();
	}

	private void addLines(Item item) {
		Key key = key(item);
		String tool = ids.get(key);
		// the job asks for several passes only where somebody has set them
		int times = item.operation().getPasses() > 1 ? item.operation().getPasses() : works.get(key).settings().passes();
		passes.merge(leg(item.stage(), tool), times, Math::max);
		List<Contour> contours = new ArrayList<>(item.element().dashes(item.operation()));
		if (contours.isEmpty()) {
			contours.addAll(item.element().region().contours());
			contours.addAll(item.element().lines());
		}
		for (Contour contour : contours) {
			lines.add(new Line(item.element().element().getId(), item.job(), item.part(), contour, item.stage(), tool, times));
		}
	}

	private static String leg(Stage stage, String tool) {
		return stage + " " + tool;
	}

	List<Item> items() {
		return items;
	}

	List<Line> lines() {
		return lines;
	}

	/** How each tool is led, by the id that lines call it by. */
	Map<String, ToolMotion> motions() {
		Map<String, ToolMotion> motions = new LinkedHashMap<>();
		works.forEach((key, work) -> {
			String id = ids.get(key);
			double offset = key.tool() instanceof Blade blade ? blade.offset() : 0;
			var motion = workshop.machine().motion();
			motions.putIfAbsent(id, new ToolMotion(id, new TrailingBlade(offset, workshop.threshold()),
					new Drive(speed(work.settings().speed()), motion.acceleration(), motion.deviation())));
		});
		return motions;
	}

	/** In mm/s; where nobody knows what settings mean, the highest is taken for the speed of travel. */
	private double speed(double setting) {
		NativeScale scale = workshop.machine().speed();
		double share = Math.max(0, Math.min(1, scale.neutral(setting)));
		return Math.max(SLOWEST, scale.meaning(setting).orElse(share * workshop.machine().motion().travel()));
	}

	/** How a leg is worked, with the most passes of any of its lines. */
	LegWork work(Leg leg) {
		Key key = works.keySet().stream()
				.filter(each -> each.kind().name().equals(leg.stage().name()) && ids.get(each).equals(leg.tool())).findFirst()
				.orElseThrow();
		LegWork work = works.get(key);
		Settings settings = work.settings();
		int times = Objects.requireNonNullElse(passes.get(leg(leg.stage(), leg.tool())), settings.passes());
		return new LegWork(work.tool(), work.stock(), work.basis(),
				new Settings(settings.exposure(), settings.pressure(), settings.speed(), times), work.reasons(),
				work.cautions());
	}
}
