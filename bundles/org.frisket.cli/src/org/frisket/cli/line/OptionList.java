package org.frisket.cli.line;

import java.io.PrintWriter;
import java.util.List;

import org.frisket.geometry.options.Option;
import org.frisket.geometry.repair.RepairStep;
import org.frisket.imports.Importer;
import org.frisket.imports.Importers;
import org.frisket.imports.job.ArtRules;
import org.frisket.prepare.RepairSteps;
import org.frisket.prepare.extension.Contribution;
import org.frisket.prepare.extension.ContributionException;

/** What {@code --list} says: what there is, and what can be set about it. */
public record OptionList(PrintWriter out) {

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

	private void unusable(Exception e) {
		out.println("    cannot be used: " + e.getMessage());
	}

	private void options(List<Option> options) {
		for (Option option : options) {
			out.printf("    %s=%s: %s%s%n", option.name(), option.initial(), option.description(),
					option.choices().isEmpty() ? "" : " (" + String.join(", ", option.choices()) + ")");
		}
	}
}
