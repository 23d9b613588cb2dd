package org.frisket.orders.work.again;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.options.Option;
import org.frisket.material.Stock;
import org.frisket.material.StockField;
import org.frisket.material.desk.DeskState;
import org.frisket.material.tools.Machine;
import org.frisket.material.tools.MachineOptions;
import org.frisket.material.tools.Tool;
import org.frisket.material.tools.ToolOptions;
import org.frisket.material.trials.Run;
import org.frisket.model.Job;
import org.frisket.orders.Fact;
import org.frisket.prepare.Severity;
import org.frisket.run.Workshop;

/** What has become of the stock, the machines and the tools a job was made with. */
final class StudioNotes {

	/** What of a stock decides how deep a blade must go. */
	private static final Set<String> DEPTH = Set.of(StockField.GRAMMAGE.word(), StockField.CALIPER.word(),
			StockField.FAMILY.word());
	/** What of a machine or a tool decides where a line comes to lie. */
	private static final Set<String> TRUTH = Set.of("scale-x", "scale-y", "units", "offset", "origin", "x", "y", "zero");

	private final Job job;
	private final DeskState desk;
	private final Workshop workshop;
	private final List<Fact> facts;

	/** @param facts that were remembered when the job was made; may be empty */
	StudioNotes(Job job, DeskState desk, List<Fact> facts) {
		this.job = job;
		this.desk = desk;
		this.facts = facts;
		workshop = Workshop.of(desk);
	}

	List<Note> notes() {
		List<Note> notes = new ArrayList<>();
		MadeWith.stocks(job).forEach(id -> stock(id, notes));
		both(Fact.Subject.MACHINE, MadeWith.machines(job, desk)).forEach(id -> machine(id, notes));
		both(Fact.Subject.TOOL, MadeWith.tools(job, desk)).forEach(id -> tool(id, notes));
		return notes;
	}

	private Set<String> both(Fact.Subject subject, Set<String> known) {
		Set<String> ids = new LinkedHashSet<>(known);
		facts.stream().filter(fact -> fact.subject() == subject).map(Fact::item).forEach(ids::add);
		return ids;
	}

	private Map<String, String> then(Fact.Subject subject, String id) {
		Map<String, String> texts = new LinkedHashMap<>();
		facts.stream().filter(fact -> fact.subject() == subject && fact.item().equals(id))
				.forEach(fact -> texts.put(fact.field(), fact.text()));
		return texts;
	}

	private void stock(String id, List<Note> notes) {
		Map<String, String> then = then(Fact.Subject.STOCK, id);
		if (then.isEmpty()) {
			lastRun(id).ifPresent(run -> fromRun(run, then));
		}
		Optional<Stock> now = desk.stock(id);
		if (now.isEmpty()) {
			if (workshop.stock(id).isEmpty()) {
				String name = then.getOrDefault(StockField.NAME.word(), id);
				notes.add(new Note(Severity.BLOCKING, NLS.bind(Messages.StudioNotes_stock, name),
						NLS.bind(Messages.StudioNotes_known, id), Messages.StudioNotes_gone, Messages.StudioNotes_stockCure));
			}
			return;
		}
		Map<String, String> texts = texts(MadeWith.of(now.get()));
		for (StockField field : StockField.values()) {
			String was = then.get(field.word());
			String is = texts.get(field.word());
			if (was != null && is != null && !isSame(field, was, is)) {
				notes.add(new Note(DEPTH.contains(field.word()) ? Severity.CAUTION : Severity.NOTE,
						NLS.bind(Messages.StudioNotes_of, NLS.bind(Messages.StudioNotes_stock, now.get().name()), field.label()),
						text(field, was), text(field, is),
						DEPTH.contains(field.word()) ? Messages.StudioNotes_depthCure : cure(field)));
			}
		}
	}

	private static String cure(StockField field) {
		return field == StockField.PRICE ? Messages.StudioNotes_priceCure
				: field == StockField.COLOUR ? Messages.StudioNotes_colourCure : "";
	}

	private static boolean isSame(StockField field, String was, String is) {
		return was.equals(is) || field.isNumber() && !was.isEmpty() && !is.isEmpty()
				&& Double.parseDouble(was) == Double.parseDouble(is);
	}

	private static String text(StockField field, String text) {
		return text.isEmpty() ? Messages.StudioNotes_nothing : switch (field) {
		case GRAMMAGE -> NLS.bind(Messages.StudioNotes_grammage, text);
		case CALIPER -> NLS.bind(Messages.StudioNotes_caliper, text);
		default -> text;
		};
	}

	/** Of this job in this stock, the latest. */
	private Optional<Run> lastRun(String stock) {
		List<Run> runs = MadeWith.runs(job, desk).stream().filter(run -> run.stock().stock().equals(stock)).toList();
		return runs.isEmpty() ? Optional.empty() : Optional.of(runs.get(runs.size() - 1));
	}

	/** A run knows no more than what it needed for its settings. */
	private static void fromRun(Run run, Map<String, String> then) {
		then.put(StockField.FAMILY.word(), StockField.wordOf(run.stock().family()));
		if (run.stock().grammage() > 0) {
			then.put(StockField.GRAMMAGE.word(), Double.toString(run.stock().grammage()));
		}
		if (run.stock().caliperMm() > 0) {
			then.put(StockField.CALIPER.word(), Double.toString(run.stock().caliperMm()));
		}
	}

	private void machine(String id, List<Note> notes) {
		if (id.equals(Machine.plain().id())) {
			return;
		}
		Map<String, String> then = then(Fact.Subject.MACHINE, id);
		Optional<Machine> now = desk.machines().stream().filter(machine -> machine.id().equals(id)).findFirst();
		if (now.isEmpty()) {
			notes.add(new Note(Severity.CAUTION, NLS.bind(Messages.StudioNotes_machine, then.getOrDefault("name", id)),
					NLS.bind(Messages.StudioNotes_known, id), Messages.StudioNotes_gone, Messages.StudioNotes_machineCure));
			return;
		}
		compare(NLS.bind(Messages.StudioNotes_machine, now.get().name()), then, texts(MadeWith.of(now.get())),
				MachineOptions.options(), notes);
	}

	private void tool(String id, List<Note> notes) {
		Map<String, String> then = then(Fact.Subject.TOOL, id);
		Optional<Tool> now = desk.tool(id);
		if (now.isEmpty()) {
			notes.add(new Note(Severity.CAUTION, NLS.bind(Messages.StudioNotes_tool, then.getOrDefault("name", id)),
					NLS.bind(Messages.StudioNotes_known, id), Messages.StudioNotes_gone, Messages.StudioNotes_toolCure));
			return;
		}
		compare(NLS.bind(Messages.StudioNotes_tool, now.get().name()), then, texts(MadeWith.of(now.get())),
				ToolOptions.of(now.get().kind()), notes);
	}

	private static void compare(String what, Map<String, String> then, Map<String, String> now, List<Option> options,
			List<Note> notes) {
		for (Option option : options) {
			String was = then.get(option.name());
			String is = now.get(option.name());
			if (was != null && is != null && !was.equals(is)) {
				boolean moved = TRUTH.contains(option.name());
				notes.add(new Note(moved ? Severity.CAUTION : Severity.NOTE,
						NLS.bind(Messages.StudioNotes_of, what, option.description()), was, is,
						moved ? Messages.StudioNotes_truthCure : ""));
			}
		}
	}

	private static Map<String, String> texts(List<Fact> facts) {
		Map<String, String> texts = new LinkedHashMap<>();
		facts.forEach(fact -> texts.put(fact.field(), fact.text()));
		return texts;
	}
}
