package org.frisket.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;

import javax.imageio.ImageIO;

import org.frisket.model.WholeFile;
import org.frisket.prepare.FontLibraries;
import org.frisket.typography.FontFace;
import org.frisket.typography.UnknownFontException;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.chart.GlyphChart;
import org.frisket.typography.chart.GlyphEntry;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** A picture of every glyph of a font. */
@Command(name = "glyphs", description = "Draws a chart of all glyphs of a font.", sortOptions = false)
final class GlyphsVerb implements Callable<Integer> {

	/** Always at hand, and plain. */
	private static final String LABEL_FONT = "Liberation Sans";
	private static final String ENDING = ".png";

	@Spec
	private CommandSpec spec;

	@Option(names = "--font", required = true, paramLabel = "FILE|NAME", description = "A font file, or the name of a font the product or the system has.")
	private String font;

	@Option(names = "--find", paramLabel = "WORDS", description = "Only glyphs that are meant by this: a character, a code point, words of a name.")
	private String words = "";

	@Option(names = "--out", required = true, paramLabel = "FILE", description = "The picture, a .png file; a chart of several pages becomes several files with numbers.")
	private Path output;

	@Mixin
	private StudioOption studio = new StudioOption();

	@Option(names = "--help", usageHelp = true, description = "Shows this help.")
	private boolean help;

	@Override
	public Integer call() throws Refusal {
		studio.choose();
		String name = output.getFileName() == null ? "" : output.getFileName().toString();
		if (!name.toLowerCase(Locale.ROOT).endsWith(ENDING)) {
			throw new Refusal("--out: no chart can be written to “" + output + "”; there is " + ENDING);
		}
		FontFace face = face(font);
		GlyphChart chart = GlyphChart.of(face);
		List<GlyphEntry> entries = chart.search(words);
		if (entries.isEmpty()) {
			throw new Refusal("--find: “" + face.fullName() + "” has no such glyph");
		}
		Map<Path, byte[]> pages = pages(new GlyphSheet(chart, face(LABEL_FONT)), entries, name, face.fullName());
		PrintWriter out = spec.commandLine().getOut();
		for (Map.Entry<Path, byte[]> page : pages.entrySet()) {
			try {
				WholeFile.write(stream -> stream.write(page.getValue()), page.getKey());
			} catch (IOException e) {
				throw new Refusal("cannot write " + page.getKey() + ": " + WholeFile.reason(e));
			}
		}
		out.println(face.fullName() + ": " + entries.size() + " glyphs");
		new Report(out).acknowledgement(face);
		pages.keySet().forEach(file -> out.println("wrote " + file));
		return Frisket.DONE;
	}

	/** All pages are made before any is written. */
	private Map<Path, byte[]> pages(GlyphSheet sheet, List<GlyphEntry> entries, String name, String heading)
			throws Refusal {
		List<List<GlyphEntry>> parts = new ArrayList<>();
		for (int from = 0; from < entries.size(); from += GlyphSheet.PAGE) {
			parts.add(entries.subList(from, Math.min(entries.size(), from + GlyphSheet.PAGE)));
		}
		Map<Path, byte[]> pages = new LinkedHashMap<>();
		String stem = name.substring(0, name.length() - ENDING.length());
		for (int i = 0; i < parts.size(); i++) {
			boolean several = parts.size() > 1;
			String title = several ? "%s (%d/%d)".formatted(heading, i + 1, parts.size()) : heading;
			Path file = several ? output.resolveSibling("%s-%d%s".formatted(stem, i + 1, ENDING)) : output;
			ByteArrayOutputStream bytes = new ByteArrayOutputStream();
			try {
				ImageIO.write(sheet.page(parts.get(i), title), "png", bytes);
			} catch (IOException e) {
				throw new Refusal(e);
			}
			pages.put(file, bytes.toByteArray());
		}
		return pages;
	}

	private static FontFace face(String name) throws Refusal {
		try {
			return FontLibraries.installed().find(name);
		} catch (UnknownFontException | UnreadableFontException e) {
			throw new Refusal(e);
		}
	}
}
