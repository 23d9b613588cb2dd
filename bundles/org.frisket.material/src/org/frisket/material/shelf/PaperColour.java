package org.frisket.material.shelf;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What colour a text means: {@code #rrggbb} anywhere in it, else the last plain word for a colour, English or German. The
 * values of the words are our own, such as paper of that name often has.
 */
public final class PaperColour {

	private static final Pattern HEX = Pattern.compile("#([0-9a-fA-F]{6})(?![0-9a-fA-F])");
	private static final Pattern BREAK = Pattern.compile("[^\\p{L}]+");

	private static final Map<String, Integer> WORDS = Map.ofEntries(word("white", 0xf8f8f5), word("weiss", 0xf8f8f5),
			word("ivory", 0xf6efd9), word("elfenbein", 0xf6efd9), word("cream", 0xf3e7c4), word("creme", 0xf3e7c4),
			word("natural", 0xe9dfc7), word("natur", 0xe9dfc7), word("kraft", 0xb98d5b), word("brown", 0x7a4f2e),
			word("braun", 0x7a4f2e), word("black", 0x232323), word("schwarz", 0x232323), word("grey", 0x8d8f91),
			word("gray", 0x8d8f91), word("grau", 0x8d8f91), word("silver", 0xc3c6c9), word("silber", 0xc3c6c9),
			word("gold", 0xc9a54c), word("copper", 0xb4704a), word("kupfer", 0xb4704a), word("red", 0xb8322f),
			word("rot", 0xb8322f), word("pink", 0xe58fae), word("rosa", 0xe58fae), word("orange", 0xe0842d),
			word("yellow", 0xf0cf3f), word("gelb", 0xf0cf3f), word("green", 0x3f8a4c), word("gruen", 0x3f8a4c),
			word("teal", 0x1f6f6c), word("petrol", 0x1f6f6c), word("turquoise", 0x3ab0a8), word("turkis", 0x3ab0a8),
			word("blue", 0x2f5fa6), word("blau", 0x2f5fa6), word("navy", 0x1f2f55), word("violet", 0x6c4a97),
			word("violett", 0x6c4a97), word("purple", 0x6c4a97), word("lila", 0x9b7bb8), word("lilac", 0x9b7bb8),
			word("grun", 0x3f8a4c));

	private PaperColour() {
	}

	private static Map.Entry<String, Integer> word(String word, int rgb) {
		return Map.entry(word, rgb);
	}

	/** As 0xrrggbb; empty if the text names no colour that is known. */
	public static OptionalInt of(String text) {
		Matcher hex = HEX.matcher(text);
		if (hex.find()) {
			return OptionalInt.of(Integer.parseInt(hex.group(1), 16));
		}
		String plain = Normalizer.normalize(text.replace("ß", "ss"), Normalizer.Form.NFKD).replaceAll("\\p{M}+", "");
		OptionalInt found = OptionalInt.empty();
		for (String word : BREAK.split(plain.toLowerCase(Locale.ROOT))) {
			Integer rgb = WORDS.get(word);
			if (rgb != null) {
				found = OptionalInt.of(rgb);
			}
		}
		return found;
	}

	/** As a layer has it, {@code #rrggbb}. */
	public static String hex(int rgb) {
		return String.format(Locale.ROOT, "#%06x", rgb & 0xffffff);
	}
}
