package org.frisket.typography.internal.shape;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Outline;
import org.frisket.typography.stroke.StrokeFont;
import org.frisket.typography.stroke.StrokeGlyph;

/**
 * A font of single lines. Its glyphs are numbered from 1 on in the order of the characters they stand for. It has no
 * kerning and no features; glyphs of several characters are its ligatures. Lines run across only.
 */
public final class StrokeEngine implements FontEngine {

	private final StrokeFont font;
	private final List<String> sequences;
	private final Map<String, Integer> numbers = new HashMap<>();

	public StrokeEngine(StrokeFont font) {
		this.font = font;
		sequences = font.sequences();
		for (int i = 0; i < sequences.size(); i++) {
			numbers.put(sequences.get(i), i + 1);
		}
	}

	@Override
	public int glyph(int codePoint) {
		return Character.isValidCodePoint(codePoint) ? numbers.getOrDefault(Character.toString(codePoint), 0) : 0;
	}

	private StrokeGlyph at(int glyph) {
		return glyph < 1 || glyph > sequences.size() ? StrokeGlyph.NOTHING : font.glyphs().get(sequences.get(glyph - 1));
	}

	@Override
	public Outline outline(int glyph) {
		return at(glyph).strokes();
	}

	@Override
	public double advance(int glyph) {
		return at(glyph).advance();
	}

	@Override
	public List<PlacedGlyph> shape(char[] text, Run run, Shaping shaping) {
		boolean ligatures = shaping.features().value("liga").orElse(shaping.ligatures() ? 1 : 0) != 0;
		String line = new String(text);
		List<int[]> found = new ArrayList<>();
		for (int i = run.start(); i < run.limit();) {
			int one = Character.charCount(line.codePointAt(i));
			int length = ligatures ? Math.max(one, font.lengthAt(line, i, run.limit())) : one;
			int end = Math.min(run.limit(), i + length);
			found.add(new int[] { numbers.getOrDefault(line.substring(i, end), 0), i });
			i = end;
		}
		return placed(found, run.rightToLeft());
	}

	private List<PlacedGlyph> placed(List<int[]> found, boolean rightToLeft) {
		List<PlacedGlyph> placed = new ArrayList<>();
		double pen = 0;
		for (int i = 0; i < found.size(); i++) {
			int[] glyph = found.get(rightToLeft ? found.size() - 1 - i : i);
			placed.add(new PlacedGlyph(glyph[0], glyph[1], pen, 0, advance(glyph[0])));
			pen += advance(glyph[0]);
		}
		return placed;
	}
}
