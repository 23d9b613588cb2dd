package org.frisket.typography.internal.face;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

import org.frisket.typography.face.CodePoints;
import org.frisket.typography.face.FontNames;
import org.frisket.typography.face.StyleClass;
import org.frisket.typography.internal.sfnt.FaceHeader;
import org.frisket.typography.internal.sfnt.Variations;
import org.frisket.typography.stroke.StrokeFont;

/** A font of single lines in the terms of other fonts. What it asks to be said of it stands for its licence. */
public final class StrokeTables implements FaceTables {

	private static final double CAPITALS_SHARE_OF_EM = 0.7;
	private static final StyleClass REGULAR = new StyleClass(400, 5, false);

	private final StrokeFont font;

	public StrokeTables(StrokeFont font) {
		this.font = font;
	}

	/** A font that does not say its name is called after its file. @param file that it was read as */
	public static StrokeFont named(StrokeFont font, String file) {
		return font.name().equals(file)
				? new StrokeFont(FaceTables.stem(file), font.glyphs(), font.capHeight(), font.notice()) : font;
	}

	@Override
	public FaceHeader header() {
		// number 0 stands for what the font lacks
		return new FaceHeader((int) Math.max(1, Math.round(font.capHeight() / CAPITALS_SHARE_OF_EM)),
				font.glyphs().size() + 1, (int) Math.round(font.capHeight()), 0);
	}

	@Override
	public FontNames names() {
		return new FontNames(font.name(), "Regular", font.name(), "");
	}


	@Override
	public String licence() {
		return font.notice();
	}

	@Override
	public String licenceAddress() {
		return "";
	}

	@Override
	public StyleClass style() {
		return REGULAR;
	}

	@Override
	public Variations variations() {
		return Variations.NONE;
	}

	@Override
	public List<String> features() {
		return List.of();
	}

	@Override
	public SortedMap<String, String> featureNames() {
		return Collections.emptySortedMap();
	}

	@Override
	public List<String> glyphNames() {
		List<String> names = new ArrayList<>();
		for (int i = 0; i < header().glyphCount(); i++) {
			names.add("");
		}
		return names;
	}

	@Override
	public CodePoints codePoints() {
		BitSet characters = new BitSet();
		charactersOfGlyphs().values().forEach(list -> list.forEach(characters::set));
		return CodePoints.of(characters);
	}

	@Override
	public SortedMap<Integer, List<Integer>> charactersOfGlyphs() {
		SortedMap<Integer, List<Integer>> characters = new TreeMap<>();
		List<String> sequences = font.sequences();
		for (int i = 0; i < sequences.size(); i++) {
			String sequence = sequences.get(i);
			if (sequence.codePointCount(0, sequence.length()) == 1) {
				characters.put(i + 1, List.of(sequence.codePointAt(0)));
			}
		}
		return characters;
	}
}
