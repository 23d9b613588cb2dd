package org.frisket.cli.line;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.function.Consumer;

import org.frisket.export.Exporter;
import org.frisket.export.Exporters;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.repair.RepairStep;
import org.frisket.imports.Importer;
import org.frisket.imports.Importers;
import org.frisket.imports.job.ArtRules;
import org.frisket.prepare.extension.Contribution;
import org.frisket.prepare.extension.ContributionException;
import org.frisket.prepare.repair.RepairSteps;
import org.frisket.run.RunOptions;

/** What {@code --list} says: what there is, and what can be set about it. */
public record OptionList(PrintWriter out) {

	/** What is listed, as a text. */
	public static String text(Consumer<OptionList> what) {
		StringWriter text = new StringWriter();
		PrintWriter out = new PrintWriter(text);
		what.accept(new OptionList(out));
		out.flush();
		return text.toString();
	}

	public void heading(String words) {
		out.println(words);
	}

	public void exporters() {
		for (Contribution<Exporter> exporter : Exporters.all()) {
			out.printf(".%s %s (%s)%n", Exporters.ending(exporter), Exporters.name(exporter), exporter.bundle());
			try {
				options(exporter.create().options());
			} catch (ContributionException | RuntimeException | LinkageError e) {
				unusable(e);
			}
		}
	}

	/** What can be chosen for a machine's run. */
	public void run() {
		options(RunOptions.options());
	}

	public void importers() {
		for (Contribution<Importer> importer : Importers.all()) {
			out.printf(".%s %s (%s)%n", String.join(" .", Importers.endings(importer)), Importers.name(importer),
					importer.bundle());
			try {
				options(importer.create().options());
			} catch (ContributionException | RuntimeException e) {
				unusable(e);
			}
		}
	}

	public void repairs() {
		for (Contribution<RepairStep> step : RepairSteps.all()) {
			out.printf("%s (%s)%n", RepairSteps.name(step), step.bundle());
			try {
				options(RepairSteps.options(step));
			} catch (ContributionException e) {
				unusable(e);
			}
		}
	}

	public void rules() {
		out.println("what becomes of it in the job");
		options(ArtRules.options());
	}

	private void unusable(Throwable e) {
		out.println("    cannot be used: " + e.getMessage());
	}

	private void options(List<Option> options) {
		for (Option option : options) {
			out.printf("    %s=%s: %s%s%n", option.name(), option.initial(), option.description(), range(option));
		}
	}

	private static String range(Option option) {
		String unit = option.unit().isEmpty() ? "" : " " + option.unit();
		return switch (option.kind()) {
		case CHOICE -> " (" + String.join(", ", option.choices()) + ")";
		case LENGTH, COUNT, NUMBER -> " (" + plain(option.least()) + unit + " to " + plain(option.most()) + unit + ")";
		case TEXT -> "";
		};
	}

	private static String plain(double value) {
		return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
	}
}
