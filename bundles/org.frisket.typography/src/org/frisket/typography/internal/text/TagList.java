package org.frisket.typography.internal.text;

import java.util.Arrays;
import java.util.List;

/** Lists of OpenType tags as they are typed. */
public final class TagList {

	private static final int LENGTH = 4;

	private TagList() {
	}

	/** Parts between commas, semicolons and blanks. */
	public static List<String> parts(String text) {
		return Arrays.stream(text.strip().replaceAll("\\s*=\\s*", "=").split("[,;\\s]+")).filter(p -> !p.isEmpty())
				.toList();
	}

	/**
	 * @param what names the kind of tag in messages
	 * @throws IllegalArgumentException unless the tag is four letters or digits
	 */
	public static String check(String what, String tag) {
		if (tag.length() != LENGTH) {
			throw new IllegalArgumentException(
					what + " “" + tag + "” has " + tag.length() + " characters; a tag has four, such as "
							+ (what.equals("axis") ? "wght" : "smcp"));
		}
		if (!tag.chars().allMatch(c -> c < 128 && Character.isLetterOrDigit(c))) {
			throw new IllegalArgumentException(what + " “" + tag + "”: a tag is made of letters and digits");
		}
		return tag;
	}
}
