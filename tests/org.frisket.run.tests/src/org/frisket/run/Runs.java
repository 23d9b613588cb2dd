package org.frisket.run;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.material.Price;
import org.frisket.material.Stock;
import org.frisket.material.StockFamily;
import org.frisket.material.desk.DeskState;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.MachineOptions;
import org.frisket.material.tools.Tool;
import org.frisket.material.trials.Run;
import org.frisket.material.trials.Trial;
import org.frisket.material.weights.Thickness;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Operation;
import org.frisket.model.OperationKind;
import org.frisket.model.Outline;
import org.frisket.model.Placement;
import org.frisket.model.Sheet;
import org.frisket.prepare.PreparedJob;
import org.frisket.sheets.LaidSheet;
import org.frisket.sheets.LaidSheets;
import org.frisket.testkit.SampleJobs;
import org.frisket.toolpath.RunChoices;

/** Workshops, jobs and sheets of Harbour Lane Paperworks. */
final class Runs {

	/** Its settings of speed are mm/s. */
	static final Map<String, String> HARBOUR = Map.ofEntries(Map.entry("name", "Harbour cutter"), Map.entry("width", "330mm"),
			Map.entry("height", "330mm"), Map.entry("speed-unit", "mm/s"), Map.entry("speed-least", "10"),
			Map.entry("speed-most", "110"), Map.entry("speed-least-means", "10"), Map.entry("speed-most-means", "110"),
			Map.entry("pressure-least", "1"), Map.entry("pressure-most", "33"));

	private Runs() {
	}

	static Machine harbour() {
		return MachineOptions.machine("harbour", HARBOUR);
	}

	static Machine harbour(Map<String, String> others) {
		Map<String, String> texts = new HashMap<>(HARBOUR);
		texts.putAll(others);
		return MachineOptions.machine("harbour", texts);
	}

	/** A card of 0.3 mm that costs 0.45 EUR a sheet. */
	static Stock white() {
		return Stock.named("Harbour white").id("harbour-white").family(StockFamily.CARD).grammage(new BigDecimal(216))
				.caliper(new Thickness(new BigDecimal("0.3"))).price(new BigDecimal("0.45")).currency(Price.currency("EUR"))
				.build();
	}

	static Workshop workshop(Machine machine, List<Tool> tools, List<Trial> trials, List<Run> runs, Stock... stocks) {
		return new Workshop(machine, new DeskState(List.of(stocks), List.of(machine), tools, Map.of(), trials, List.of(), runs,
				false));
	}

	static Workshop workshop(Tool... tools) {
		return workshop(harbour(), List.of(tools), List.of(), List.of(), white());
	}

	/** A square with its upper left corner there. */
	static String square(double x, double y, double side) {
		return "M%s %sh%sv%sh%sz".formatted(x, y, side, side, -side);
	}

	/** A job of squares of 20 mm, each of its own element, in a row. */
	static Job squares(String title, int count, OperationKind... kinds) {
		Job job = SampleJobs.outline(square(0, 0, 20), kinds[0]);
		job.setTitle(title);
		job.getLayers().get(0).setStock("harbour-white");
		for (int i = 1; i < count; i++) {
			Outline outline = Jobs.addOutline(job.getLayers().get(0), square(30 * i, 0, 20));
			outline.setName("Square " + (i + 1));
			Jobs.addOperation(outline, kinds[0]);
		}
		for (int i = 1; i < kinds.length; i++) {
			for (var element : job.getLayers().get(0).getElements()) {
				Jobs.addOperation(element, kinds[i]);
			}
		}
		return job;
	}

	static Operation operation(Job job, int element, int operation) {
		return job.getLayers().get(0).getElements().get(element).getOperations().get(operation);
	}

	static MachineRun run(Job job, Workshop workshop) {
		return RunMaker.of(SampleJobs.prepared(job), workshop, RunChoices.plain(), Monitor.NONE);
	}

	static Sheet sheet(Job job, double width, double height) {
		return Jobs.addSheet(job, "harbour-white", width, height);
	}

	/** The first sheet of a job with what lies on it. */
	static LaidSheet laid(Job host, Job... guests) {
		Map<String, PreparedJob> jobs = new HashMap<>();
		List<Job> all = new ArrayList<>(List.of(guests));
		all.add(host);
		all.forEach(job -> jobs.put(job.getId(), SampleJobs.prepared(job)));
		return LaidSheets.of(host, jobs, Tolerance.DEFAULT, Monitor.NONE).get(0);
	}

	/** A copy of the first element of a job. @param guest whose part it is; null for one of the host */
	static void lay(Sheet sheet, Job job, Job guest, double x, double y) {
		Job of = guest == null ? job : guest;
		Placement placement = Jobs.addPlacement(sheet, of.getLayers().get(0).getElements().get(0).getId(), x, y, 0);
		placement.setJob(guest == null ? null : guest.getId());
	}
}
