package org.frisket.benchmarks;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.awt.geom.Area;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.frisket.editing.wording.ChangeWording;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.OperationKind;
import org.frisket.model.Wording;
import org.frisket.prepare.checks.StockLimits;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.prepare.fonts.FontTrial;
import org.frisket.typography.FontFace;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.source.FontEntry;
import org.frisket.typography.source.FontSource;

/** Whether a wording could be cut in each font at hand, against what the Java runtime needs to unite its outlines. */
final class FitnessBenchmark {

	private static final int MOST = 200;
	private static final String TEXT = "Harbour Lane";
	private static final double HEIGHT = 20;

	private FitnessBenchmark() {
	}

	static void run() throws Exception {
		List<FontEntry> fonts = new ArrayList<>();
		List<Font> runtime = new ArrayList<>();
		for (FontSource source : FontLibraries.installed().sources()) {
			for (FontEntry font : source.fonts(Monitor.NONE)) {
				Optional<Font> same = font.index() == 0 && font.instance().isEmpty() ? runtime(font) : Optional.empty();
				if (fonts.size() < MOST && same.isPresent()) {
					fonts.add(font);
					runtime.add(same.get());
				}
			}
		}
		double first = seconds(() -> trials(fonts));
		double[] ms = Stopwatch.mediansOfFew(() -> trials(fonts), () -> areas(runtime));
		System.out.printf("will it cut, \"%s\" in %d fonts at hand: %.1f ms a font, AWT outlines and Area %.2f ms, ratio "
				+ "%.2f; the very first pass %.1f ms a font%n", TEXT, fonts.size(), ms[0] / fonts.size(),
				ms[1] / fonts.size(), ms[0] / ms[1], 1000 * first / fonts.size());
	}

	/** Empty for what one of the two cannot read, and for fonts that cannot be cut or lack the characters. */
	private static Optional<Font> runtime(FontEntry font) throws IOException {
		try {
			FontFace face = font.open();
			return face.isStroke() || !TEXT.codePoints().allMatch(face::covers) ? Optional.empty()
					: Optional.of(Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(face.bytes()))
							.deriveFont((float) HEIGHT));
		} catch (UnreadableFontException | FontFormatException e) {
			return Optional.empty();
		}
	}

	private static double seconds(Runnable work) {
		long start = System.nanoTime();
		work.run();
		return (System.nanoTime() - start) / 1e9;
	}

	/** As the list of fonts does, one after the other, each font opened anew. */
	private static Object trials(List<FontEntry> fonts) {
		Job job = Jobs.create("benchmark", "Benchmark");
		Wording wording = Jobs.addWording(Jobs.addLayer(job, "Card"), TEXT, HEIGHT);
		Jobs.addOperation(wording, OperationKind.CUT);
		FontTrial trial = new FontTrial(wording, ChangeWording::font, StockLimits.BUILT_IN, Tolerance.DEFAULT);
		return fonts.stream().map(font -> trial.of(font, Monitor.NONE)).toList();
	}

	private static Object areas(List<Font> fonts) {
		char[] chars = TEXT.toCharArray();
		return fonts.stream().map(font -> new Area(font.layoutGlyphVector(new FontRenderContext(null, true, true), chars,
				0, chars.length, Font.LAYOUT_LEFT_TO_RIGHT).getOutline())).toList();
	}
}
