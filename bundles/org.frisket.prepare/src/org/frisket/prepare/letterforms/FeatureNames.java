package org.frisket.prepare.letterforms;

import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The names of OpenType features: those of the list of registered features in the OpenType specification (Microsoft
 * Typography, "Registered features", version 1.9), and our own translations of them.
 */
public final class FeatureNames {

	private static final String BASE = "org.frisket.prepare.letterforms.features";
	/** Stylistic sets and character variants come with a number. */
	private static final Pattern NUMBERED = Pattern.compile("(ss|cv)(\\d\\d)");

	private final ResourceBundle names;

	private FeatureNames(ResourceBundle names) {
		this.names = names;
	}

	/** In the language of the locale if it is one of the program's, else in English. */
	public static FeatureNames in(Locale locale) {
		return new FeatureNames(ResourceBundle.getBundle(BASE, locale, FeatureNames.class.getClassLoader(),
				ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES)));
	}

	/** What a feature is called; its tag if it is none that is registered, or none that a user chooses. */
	public String of(String tag) {
		Matcher numbered = NUMBERED.matcher(tag);
		try {
			return numbered.matches() ? MessageFormat.format(names.getString(numbered.group(1)), Integer.valueOf(numbered.group(2)))
					: names.getString(tag);
		} catch (MissingResourceException e) {
			return tag;
		}
	}

	/**
	 * Those of a font's features that a user may choose by eye, in the same order: registered ones that change what
	 * letters look like. Features without which a script falls apart are not among them, and neither are kerning and
	 * standard ligatures, which a wording switches by itself.
	 */
	public static List<String> chosenByEye(List<String> tags) {
		ResourceBundle known = in(Locale.ROOT).names;
		return tags.stream().filter(tag -> tag.length() == 4)
				.filter(tag -> known.containsKey(tag) || NUMBERED.matcher(tag).matches()).toList();
	}
}
