package org.frisket.prepare.internal.wording;

import java.util.OptionalDouble;

import org.frisket.typography.FontFace;
import org.frisket.typography.SetText;
import org.frisket.typography.TextSpan;

/** How high the letters of a wording stand, by what their fonts say of themselves. */
final class LetterHeights {

	private LetterHeights() {
	}

	/**
	 * The least height in mm: the x-height of small letters, that of capitals for all others, and where a font does not say
	 * how high its x is. Letters nudged larger or smaller are taken as they were set. Empty without any letter.
	 *
	 * @param set the wording as it was set, which may be to the size of a box
	 */
	static OptionalDouble least(WordingSource source, SetText set) {
		String text = source.wording().getText() == null ? "" : source.wording().getText();
		double asSet = source.wording().getHeight() > 0 ? set.capHeight() / source.wording().getHeight() : 1;
		double least = Double.POSITIVE_INFINITY;
		for (int i = 0; i < text.length(); i++) {
			if (Character.isLetterOrDigit(text.charAt(i))) {
				int at = i;
				TextSpan span = source.spans().stream().filter(s -> s.start() <= at && at < s.end()).findFirst().orElse(null);
				FontFace face = span == null ? source.face() : span.face().orElse(source.face());
				double height = span == null ? source.wording().getHeight()
						: span.capHeight().orElse(source.wording().getHeight());
				boolean small = Character.isLowerCase(text.charAt(i)) && face.xHeight() > 0;
				least = Math.min(least, asSet * (small ? height * face.xHeight() / face.capHeight() : height));
			}
		}
		return least < Double.POSITIVE_INFINITY ? OptionalDouble.of(least) : OptionalDouble.empty();
	}
}
