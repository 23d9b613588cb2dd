package org.frisket.export.plan;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;

import org.frisket.export.ExportTask;
import org.frisket.export.Exporter;
import org.frisket.export.Handoff;
import org.frisket.export.WorkshopSource;
import org.frisket.export.names.NameField;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Job;
import org.frisket.model.Sheet;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.extension.Contribution;
import org.frisket.prepare.extension.ContributionException;
import org.frisket.sheets.LaidSheet;
import org.frisket.sheets.LaidSheets;
import org.frisket.toolpath.RunChoices;

/**
 * Files that are about to be written, with what goes into each.
 *
 * @param findings what is wrong with how parts lie on these sheets
 */
public record HandoffPlan(Contribution<Exporter> format, Map<String, String> options, List<Item> items,
		List<Finding> findings) {

	/** One file. */
	public record Item(Handoff handoff, Path target) {
	}

	public HandoffPlan {
		options = Map.copyOf(options);
		items = List.copyOf(items);
		findings = List.copyOf(findings);
	}

	/**
	 * @param jobs     by id: the job that is handed out, worked through, and its guests as far as they can be had
	 * @param workshop asked only for what needs it
	 * @throws IllegalArgumentException if sheets, names, place or options do not go together
	 * @throws IOException              if names need the machine and it cannot be looked up
	 * @throws CancellationException    if the monitor cancels
	 */
	public static HandoffPlan of(HandoffRequest request, Job job, Map<String, PreparedJob> jobs, WorkshopSource workshop,
			Tolerance tolerance, Monitor monitor) throws IOException {
		List<Path> targets = request.targets(job, machine(request, workshop));
		RunChoices choices = request.choices();
		List<Sheet> sheets = request.sheets().of(job);
		List<Item> items = new ArrayList<>();
		List<Finding> findings = new ArrayList<>();
		if (sheets.isEmpty()) {
			items.add(new Item(Handoff.of(jobs.get(job.getId()), workshop, choices), targets.get(0)));
		} else {
			List<LaidSheet> laid = LaidSheets.of(job, jobs, tolerance, monitor).stream()
					.filter(each -> sheets.contains(each.sheet())).toList();
			for (int i = 0; i < laid.size(); i++) {
				items.add(new Item(Handoff.of(laid.get(i), workshop, choices), targets.get(i)));
				findings.addAll(laid.get(i).findings());
			}
		}
		return new HandoffPlan(request.format(), request.options(), items, findings);
	}

	private static String machine(HandoffRequest request, WorkshopSource workshop) throws IOException {
		Destination destination = request.destination();
		return destination.isFolder() && destination.names().has(NameField.MACHINE) ? workshop.get().machine().id() : "";
	}

	public List<Path> targets() {
		return items.stream().map(Item::target).toList();
	}

	public Stream<Finding> blocking() {
		return findings.stream().filter(Finding::isBlocking);
	}

	/**
	 * Writes the files one after the other, each whole or not at all. One that fails keeps none of the others from being
	 * written; when the monitor cancels, those that are written stay.
	 *
	 * @throws IllegalArgumentException if an option's text is not a value of it; nothing is written then
	 */
	public HandoffReport write(Monitor monitor) {
		ExportTask task = new ExportTask(format);
		List<HandoffReport.Outcome> outcomes = new ArrayList<>();
		for (int i = 0; i < items.size(); i++) {
			Item item = items.get(i);
			try {
				monitor.check();
				task.write(item.handoff(), options, monitor.part(i, items.size()), item.target());
				outcomes.add(HandoffReport.written(item.target()));
			} catch (CancellationException e) {
				return new HandoffReport(outcomes, e);
			} catch (ContributionException | IOException e) {
				outcomes.add(HandoffReport.failed(item.target(), e));
			}
		}
		return new HandoffReport(outcomes, null);
	}
}
