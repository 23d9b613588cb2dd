package org.frisket.benchmarks;

import java.awt.Font;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.TextAttribute;
import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.typography.FontFace;
import org.frisket.typography.SetText;
import org.frisket.typography.Setting;
import org.frisket.typography.TextSetter;
import org.frisket.typography.source.EmbeddedFontSource;
import org.frisket.typography.source.FontLibrary;

/** A long text from words to clean outlines, against what the Java runtime needs for shaping and outlines alone. */
final class TextBenchmark {

	private static final int LETTERS = 1_000;
	private static final String WORDS = "Harbour Lane Paperworks cuts lettering, place cards and gift tags for the ferry. ";

	private TextBenchmark() {
	}

	static void run() throws Exception {
		String text = text();
		FontFace face = new FontLibrary(List.of(new EmbeddedFontSource())).find("Liberation Serif");
		Font font = Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(face.bytes())).deriveFont(100f)
				.deriveFont(Map.of(TextAttribute.KERNING, TextAttribute.KERNING_ON, TextAttribute.LIGATURES,
						TextAttribute.LIGATURES_ON));
		double[] ms = Stopwatch.medians(() -> clean(set(text, face).outline()), () -> set(text, face).outline(),
				() -> runtime(text, font));
		System.out.printf("text of %d letters shaped, outlined and cleaned: %.2f ms; shaped and outlined %.2f ms; "
				+ "AWT shaped and outlined %.2f ms%n", LETTERS, ms[0], ms[1], ms[2]);
		System.out.printf("  ratio to AWT %.2f (goal 2); without cleaning %.2f%n", ms[0] / ms[2], ms[1] / ms[2]);
	}

	private static String text() {
		StringBuilder text = new StringBuilder();
		int letters = 0;
		for (int i = 0; letters < LETTERS; i++) {
			char c = WORDS.charAt(i % WORDS.length());
			letters += Character.isLetter(c) ? 1 : 0;
			text.append(c);
		}
		return text.toString();
	}

	private static SetText set(String text, FontFace face) {
		return TextSetter.set(text, face, Setting.ofCapHeight(10), Monitor.NONE);
	}

	private static Object clean(Outline outline) {
		return new OutlineCleaner().clean(outline, FillRule.NON_ZERO, Tolerance.DEFAULT, Monitor.NONE);
	}

	private static Shape runtime(String text, Font font) {
		char[] chars = text.toCharArray();
		return font.layoutGlyphVector(new FontRenderContext(null, true, true), chars, 0, chars.length,
				Font.LAYOUT_LEFT_TO_RIGHT).getOutline();
	}
}
