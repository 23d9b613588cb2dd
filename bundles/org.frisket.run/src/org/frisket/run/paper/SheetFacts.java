package org.frisket.run.paper;

import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Bounds;
import org.frisket.material.tools.Machine;
import org.frisket.model.Job;
import org.frisket.page.flow.Column;
import org.frisket.page.flow.Figures;
import org.frisket.prepare.PreparedJob;
import org.frisket.run.MachineRun;
import org.frisket.sheets.SheetName;

/** Which job and sheet it is, in two columns. */
final class SheetFacts {

	private SheetFacts() {
	}

	static void add(Column column, MachineRun run, PreparedJob content, RunSheetForm form) {
		Job job = content.job();
		Figures figures = new Figures(form.inches());
		List<String[]> facts = new ArrayList<>();
		fact(facts, Messages.RunSheet_job, job.getNumber());
		fact(facts, Messages.RunSheet_sheet, form.sheet().map(SheetName::of).orElse(Messages.RunSheet_bench));
		fact(facts, Messages.RunSheet_customer, job.getCustomer());
		fact(facts, Messages.RunSheet_size, size(content, form, figures));
		fact(facts, Messages.RunSheet_due,
				job.getDue() == null ? null : job.getDue().format(DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM)));
		fact(facts, Messages.RunSheet_stock, stock(run, form, figures));
		fact(facts, Messages.RunSheet_machine, machine(run.machine()));
		for (int i = 0; i < facts.size(); i += 2) {
			List<String> cells = new ArrayList<>(List.of(facts.get(i)));
			if (i + 1 < facts.size()) {
				cells.addAll(List.of(facts.get(i + 1)));
			}
			column.row(cells, new double[] { 0.12, 0.38, 0.12, 0.38 }, Column.BLACK);
		}
	}

	private static void fact(List<String[]> facts, String name, String value) {
		facts.add(new String[] { name, value == null || value.isBlank() ? Messages.RunSheet_unknown : value });
	}

	/** Of the sheet, or of what lies on the bench. */
	private static String size(PreparedJob content, RunSheetForm form, Figures figures) {
		Bounds shown = content.visibleBounds();
		return form.sheet().map(sheet -> figures.size(sheet.getWidth(), sheet.getHeight()))
				.orElse(shown.isEmpty() ? null : figures.size(shown.width(), shown.height()));
	}

	private static String stock(MachineRun run, RunSheetForm form, Figures figures) {
		List<String> parts = new ArrayList<>();
		if (!form.stock().isBlank()) {
			parts.add(form.stock());
		}
		run.work().stream().map(work -> work.stock()).findFirst().ifPresent(facts -> {
			if (facts.grammage() > 0) {
				parts.add(NLS.bind(Messages.RunSheet_grammage, Figures.number(facts.grammage(), 1)));
			}
			if (facts.caliperMm() > 0) {
				parts.add(figures.length(facts.caliperMm()));
			}
		});
		return String.join(", ", parts);
	}

	/** One that nobody has described is called by its id. */
	private static String machine(Machine machine) {
		return machine.name().equals(Machine.plain().name()) ? Messages.RunSheet_noMachine : machine.name();
	}
}
