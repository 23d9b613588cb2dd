package org.frisket.typography.chart;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.frisket.geometry.Monitor;
import org.frisket.typography.FeatureList;
import org.frisket.typography.FontFace;
import org.frisket.typography.Letter;
import org.frisket.typography.SetText;
import org.frisket.typography.Setting;
import org.frisket.typography.TextSetter;

/**
 * A text that comes out as one glyph when it is set in its face: its character, or the characters of a ligature, or a
 * character with a feature that chooses another form. It is found by trying, so that it holds for the shaping that the
 * bench does.
 *
 * @param features that have to be set; none for most glyphs
 */
public record GlyphText(String text, FeatureList features) {

	/** More settings than this are not tried; a big face has more characters times features. */
	private static final int MOST_TRIALS = 60_000;
	/** How many forms of one letter a feature may offer. */
	private static final int MOST_FORMS = 12;
	private static final FeatureList PLAIN = FeatureList.parse("-calt,-liga,-clig");

	/**
	 * @return empty if no text that was tried comes out as this glyph, or if it leaves no mark
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public static Optional<GlyphText> of(GlyphChart chart, GlyphEntry entry, Monitor monitor) {
		if (chart.face().outline(entry.glyph()).isEmpty()) {
			return Optional.empty();
		}
		Search search = new Search(chart.face(), entry.glyph(), monitor);
		Optional<GlyphText> found = search.among(texts(chart, entry), true);
		if (found.isEmpty() && entry.characters().isEmpty()) {
			found = search.among(chart.face().charactersOfGlyphs().values().stream()
					.map(characters -> Character.toString(characters.get(0))).toList(), false);
		}
		return found;
	}

	/** The glyph's own characters, and what its name is made of. */
	private static Set<String> texts(GlyphChart chart, GlyphEntry entry) {
		Set<String> texts = new LinkedHashSet<>();
		entry.characters().forEach(character -> texts.add(Character.toString(character)));
		int stop = entry.name().indexOf('.');
		String stem = stop > 0 ? entry.name().substring(0, stop) : entry.name();
		if (entry.characters().isEmpty() && !stem.isEmpty()) {
			Map<String, Integer> named = new LinkedHashMap<>();
			for (GlyphEntry other : chart.entries()) {
				if (!other.characters().isEmpty()) {
					named.putIfAbsent(other.name(), other.characters().get(0));
				}
			}
			StringBuilder text = new StringBuilder();
			boolean known = true;
			for (String part : stem.split("_")) {
				Integer character = named.get(part);
				known &= character != null;
				text.append(character == null ? "" : Character.toString(character));
			}
			if (known) {
				texts.add(text.toString());
			}
		}
		return texts;
	}

	private static final class Search {

		private final FontFace face;
		private final int glyph;
		private final Monitor monitor;
		private final List<FeatureList> features = new ArrayList<>();
		private int trials;

		Search(FontFace face, int glyph, Monitor monitor) {
			this.face = face;
			this.glyph = glyph;
			this.monitor = monitor;
			features.add(FeatureList.NONE);
			features.add(PLAIN);
			// kern and mark move glyphs and make none
			face.features().stream().filter(tag -> !tag.matches("kern|mark|mkmk|curs|dist|abvm|blwm|vert|vrt2|vkrn"))
					.forEach(tag -> features.add(new FeatureList(Map.of(tag, 1))));
		}

		/** @param forms whether each of several forms of a feature is tried */
		Optional<GlyphText> among(Iterable<String> texts, boolean forms) {
			for (String text : texts) {
				for (FeatureList feature : features) {
					if (makes(text, feature)) {
						return Optional.of(new GlyphText(text, feature));
					}
				}
				Optional<GlyphText> further = forms ? form(text) : Optional.empty();
				if (further.isPresent()) {
					return further;
				}
			}
			return Optional.empty();
		}

		private Optional<GlyphText> form(String text) {
			for (FeatureList feature : features.subList(2, features.size())) {
				String tag = feature.values().keySet().iterator().next();
				for (int form = 2; form <= MOST_FORMS; form++) {
					FeatureList further = new FeatureList(Map.of(tag, form));
					if (makes(text, further)) {
						return Optional.of(new GlyphText(text, further));
					}
				}
			}
			return Optional.empty();
		}

		private boolean makes(String text, FeatureList feature) {
			if (trials++ >= MOST_TRIALS) {
				return false;
			}
			monitor.check();
			SetText set = TextSetter.set(text, face, Setting.ofCapHeight(1).withFeatures(feature), Monitor.NONE);
			List<Letter> letters = set.letters();
			return set.missing().isEmpty() && letters.size() == 1 && letters.get(0).glyphs().equals(List.of(glyph));
		}
	}
}
