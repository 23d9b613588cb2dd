package org.frisket.cli.lettering;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.Status;
import org.frisket.cli.line.StudioOption;
import org.frisket.cli.work.Report;
import org.frisket.geometry.Monitor;
import org.frisket.page.chart.ChartFiles;
import org.frisket.page.chart.ChartPages;
import org.frisket.page.chart.ChartSheet;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.prepare.layout.Paper;
import org.frisket.typography.FontFace;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.chart.GlyphChart;
import org.frisket.typography.chart.GlyphEntry;
import org.frisket.typography.source.UnknownFontException;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** A chart of every glyph of a font, on paper or as pictures. */
@Command(name = "glyphs", description = "Draws a chart of all glyphs of a font.", sortOptions = false)
public final class GlyphsVerb implements Callable<Integer> {

	/** Of lengths on the pages. */
	enum Unit {
		mm, in
	}

	@Spec
	private CommandSpec spec;

	@Option(names = "--font", required = true, paramLabel = "FILE|NAME", description = "A font file, or the name of a font the product or the system has.")
	private String font;

	@Option(names = "--find", paramLabel = "WORDS", description = "Only glyphs that are meant by this: a character, a code point, words of a name.")
	private String words = "";

	@Option(names = "--out", required = true, paramLabel = "FILE", description = "A .pdf file for all pages, or a .png file; pictures of several pages become several files with numbers.")
	private Path output;

	@Mixin
	private StudioOption studio = new StudioOption();

	@Option(names = "--paper", paramLabel = "SIZE", defaultValue = "a4", description = "a4 or letter (default ${DEFAULT-VALUE}).")
	private Paper paper;

	@Option(names = "--unit", paramLabel = "UNIT", defaultValue = "mm", description = "Of the lengths on the pages: mm or in (default ${DEFAULT-VALUE}).")
	private Unit unit;

	@Option(names = "--date", paramLabel = "DATE", description = "A date for the pages, such as 2026-11-29 (default none, so that the same chart is the same file).")
	private LocalDate date;

	@Option(names = "--help", usageHelp = true, description = "Shows this help.")
	private boolean help;

	@Override
	public Integer call() throws Refusal {
		studio.choose();
		if (!ChartFiles.canWrite(output)) {
			throw new Refusal("--out: no chart can be written to “" + output + "”; there are "
					+ String.join(" and ", ChartFiles.ENDINGS));
		}
		FontFace face = face();
		GlyphChart chart = GlyphChart.of(face);
		List<GlyphEntry> entries = chart.search(words);
		if (entries.isEmpty()) {
			throw new Refusal("--find: “" + face.fullName() + "” has no such glyph");
		}
		ChartSheet sheet = new ChartSheet(paper, unit == Unit.in, Optional.ofNullable(date));
		try {
			List<Path> files = ChartFiles.write(new ChartPages(chart, entries, sheet), output, Monitor.NONE);
			PrintWriter out = spec.commandLine().getOut();
			out.println(face.fullName() + ": " + entries.size() + " glyphs");
			new Report(out).acknowledgement(face);
			files.forEach(file -> out.println("wrote " + file));
		} catch (IOException e) {
			throw new Refusal("cannot write " + e.getMessage());
		}
		return Status.DONE;
	}

	private FontFace face() throws Refusal {
		try {
			return FontLibraries.installed().find(font);
		} catch (UnknownFontException | UnreadableFontException e) {
			throw new Refusal(e);
		}
	}
}
