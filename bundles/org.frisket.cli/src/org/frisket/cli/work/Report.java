package org.frisket.cli.work;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Length;
import org.frisket.prepare.Finding;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.Unit;
import org.frisket.prepare.fonts.Fitness;
import org.frisket.typography.FontFace;

/** What a verb says on success: one fact a line. */
public final class Report {

	private final PrintWriter out;

	public Report(PrintWriter out) {
		this.out = out;
	}

	public void summary(PreparedJob job, List<Path> written) {
		job.elements().forEach(this::element);
		written.forEach(file -> out.println("wrote " + file));
	}

	private void element(PreparedElement element) {
		Bounds bounds = element.bounds();
		String lines = element.lines().isEmpty() ? "" : ", " + element.lines().size() + " lines";
		out.printf(Locale.ROOT, "%s: %s × %s, %d pieces, %d nodes%s%n", element.element().getName(),
				Length.text(bounds.width(), 2), Length.text(bounds.height(), 2), element.region().pieces().size(),
				element.region().nodeCount(), lines);
	}

	/** What is to be known of a font of single lines: that it is drawn, and whom to thank for it. */
	public void font(FontFace face, boolean drawn) {
		if (face.isStroke() && !drawn) {
			out.println("“" + face.fullName() + "” is a font of single lines: the wording is drawn, not cut");
		}
		acknowledgement(face);
	}

	public void acknowledgement(FontFace face) {
		if (face.isStroke() && !face.licence().isEmpty()) {
			out.println(face.licence());
		}
	}

	/** One finding a line: severity, kind, element, place, values, what is wrong, what helps. */
	public void findings(List<Finding> findings) {
		for (Finding finding : findings) {
			out.printf(Locale.ROOT, "%s %s %s at %.2f,%.2f mm%s: %s %s%n",
					finding.severity().name().toLowerCase(Locale.ROOT), finding.id(), finding.element(),
					finding.place().x(), finding.place().y(), values(finding), finding.message(), finding.cure());
		}
	}

	/** How the letters of each wording measure, one a line; places in the job's frame. */
	public void wordings(Map<PreparedElement, Fitness> wordings) {
		wordings.forEach((element, fitness) -> out.printf(Locale.ROOT,
				"wording %s (%s): %d pieces, stroke %s, gap %s, counter %s, point %s, piece %s, cuts from %s%n",
				element.element().getId(), element.element().getName(), fitness.pieces(),
				measure(fitness.thinnestStroke(), "mm"), measure(fitness.narrowestGap(), "mm"),
				measure(fitness.smallestCounter(), "mm"), measure(fitness.sharpestPoint(), "°"),
				measure(fitness.smallestPiece(), "mm"), fitness.smallestHeight().isPresent()
						? Length.text(fitness.smallestHeight().getAsDouble(), 1) : "no height"));
	}

	private static String measure(Optional<Fitness.Measure> measure, String unit) {
		return measure.map(found -> String.format(Locale.ROOT, "%.2f %s at %.2f,%.2f", found.value(), unit,
				found.place().x(), found.place().y())).orElse("none");
	}

	private static String values(Finding finding) {
		if (finding.measured().isEmpty()) {
			return "";
		}
		boolean word = finding.unit() == Unit.MM || finding.unit() == Unit.DPI;
		String unit = (word ? " " : "") + finding.unit().symbol();
		return String.format(Locale.ROOT, " (%.3f%s, limit %.3f%s)", finding.measured().getAsDouble(), unit,
				finding.limit().orElse(0), unit);
	}
}
